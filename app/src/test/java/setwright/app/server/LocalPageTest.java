package setwright.app.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.app.logbook.StoryDesk;

/**
 * Who gets in. The attacks are those of the OWASP cheat sheets on cross-site request forgery, on DNS rebinding and on path traversal; the headers
 * are checked against W3C's Content Security Policy Level 3 (names of directives, from memory).
 */
final class LocalPageTest {
    private static final byte[] NOTE = "{\"words\":\"a note\",\"stint\":0}".getBytes(StandardCharsets.UTF_8);
    private static final int MOST = 200_000;

    @TempDir
    private static Path folder;

    private static ServedLogbook served;

    @BeforeAll
    static void start() {
        served = ServedLogbook.in(folder.resolve("season"), MOST);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    private static RawRequest request(String line) {
        return new RawRequest(served.address(), line);
    }

    private static String origin() {
        return "http://" + URI.create(served.address()).getAuthority();
    }

    private static String token() throws IOException {
        Matcher matcher = Pattern.compile("name=\"setwright-token\" content=\"([^\"]+)\"")
                .matcher(request("GET /").fromThisMachine().answer());
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    private static long notes() {
        return new StoryDesk(served.logbook()).all().size();
    }

    @Test
    void onlyTheLoopbackAddressListens() throws IOException {
        int port = URI.create(served.address()).getPort();
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress())
                .toList();
        for (InetAddress other : others) {
            assertThatThrownBy(() -> {
                        try (Socket socket = new Socket()) {
                            socket.connect(new InetSocketAddress(other, port), 2_000);
                        }
                    })
                    .as(other.toString())
                    .isInstanceOf(IOException.class);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"evil.example", "evil.example:80", "127.0.0.1", "127.0.0.1.evil.example", "192.168.0.7", ""})
    void aNameThatSomebodyPointsAtThisMachineIsRefused(String host) throws IOException {
        assertThat(request("GET /").header("Host", host).answer())
                .startsWith("HTTP/1.1 40")
                .doesNotContain("token");
    }

    @Test
    void bothNamesOfThisMachineAreLetIn() throws IOException {
        int port = URI.create(served.address()).getPort();
        for (String host : List.of("127.0.0.1:" + port, "localhost:" + port)) {
            assertThat(request("GET /").header("Host", host).answer()).startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void headersForbidWhatThePageDoesNotNeed() throws IOException {
        String answer = request("GET /").fromThisMachine().answer();
        Matcher policy = Pattern.compile("Content-Security-Policy: (.*)").matcher(answer);
        assertThat(policy.find()).isTrue();
        assertThat(policy.group(1))
                .contains(
                        "default-src 'none'",
                        "script-src 'self'",
                        "style-src 'self'",
                        "connect-src 'self'",
                        "base-uri 'none'",
                        "frame-ancestors 'none'")
                .doesNotContain("unsafe-eval", "http:", "https:", "*");
        assertThat(policy.group(1).replace("style-src-attr 'unsafe-inline'", ""))
                .doesNotContain("unsafe-inline");
        assertThat(answer)
                .contains(
                        "X-Content-Type-Options: nosniff",
                        "Referrer-Policy: no-referrer",
                        "Cross-Origin-Resource-Policy: same-origin",
                        "Cross-Origin-Opener-Policy: same-origin")
                .doesNotContain("Access-Control-Allow-Origin")
                .doesNotContain("<script>", "javascript:");
    }

    @Test
    void whatChangesSomethingNeedsOriginAndToken() throws IOException {
        String token = token();
        long before = notes();
        assertThat(request("POST /notes").fromThisMachine().body(NOTE).answer()).startsWith("HTTP/1.1 403");
        assertThat(request("POST /notes")
                        .fromThisMachine()
                        .header("Origin", origin())
                        .body(NOTE)
                        .answer())
                .startsWith("HTTP/1.1 403")
                .contains("Load it again");
        assertThat(request("POST /notes")
                        .fromThisMachine()
                        .header("Origin", "http://evil.example")
                        .header("Setwright-Token", token)
                        .body(NOTE)
                        .answer())
                .startsWith("HTTP/1.1 403");
        assertThat(request("POST /notes")
                        .fromThisMachine()
                        .header("Origin", origin())
                        .header("Setwright-Token", token + "x")
                        .body(NOTE)
                        .answer())
                .startsWith("HTTP/1.1 403");
        assertThat(notes()).isEqualTo(before);
        assertThat(request("POST /notes")
                        .fromThisMachine()
                        .header("Origin", origin())
                        .header("Setwright-Token", token)
                        .body(NOTE)
                        .answer())
                .startsWith("HTTP/1.1 200");
        assertThat(notes()).isEqualTo(before + 1);
    }

    @Test
    void whoIsRefusedIsNotGivenTheToken() throws IOException {
        assertThat(request("GET /")
                        .header("Host", "evil.example")
                        .header("Accept", "text/html")
                        .answer())
                .startsWith("HTTP/1.1 403")
                .contains("That did not work.")
                .doesNotContain(token());
    }

    @Test
    void otherSitesAskForNothingButByALink() throws IOException {
        for (String site : List.of("cross-site", "same-site")) {
            assertThat(request("GET /jobs/stream")
                            .fromThisMachine()
                            .header("Sec-Fetch-Site", site)
                            .header("Sec-Fetch-Mode", "no-cors")
                            .header("Sec-Fetch-Dest", "image")
                            .answer())
                    .startsWith("HTTP/1.1 403");
            assertThat(request("GET /")
                            .fromThisMachine()
                            .header("Sec-Fetch-Site", site)
                            .header("Sec-Fetch-Mode", "navigate")
                            .header("Sec-Fetch-Dest", "document")
                            .answer())
                    .startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void theNameOfACarIsNoFile() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "nobody's business\n");
        String token = token();
        String key = post("/uploads?name=a.csv", token, "t;v\n0;1\n").replaceAll("(?s).*\"key\":\"([^\"]+)\".*", "$1");
        post(
                "/recordings",
                token,
                "{\"recording\":\"" + key + "\",\"beside\":[],\"sheet\":\"\",\"map\":\"\",\"car\":\"" + secret
                        + "\",\"driver\":\"\",\"circuit\":\"\"}");
        String jobs = request("GET /jobs/stream")
                .fromThisMachine()
                .header("Accept", "text/event-stream")
                .answerUntil("It has none yet");
        assertThat(jobs)
                .contains("neither a car sheet nor a car of the logbook")
                .doesNotContain("nobody's business");
    }

    private static String post(String path, String token, String body) throws IOException {
        return request("POST " + path)
                .fromThisMachine()
                .header("Origin", origin())
                .header("Setwright-Token", token)
                .body(body.getBytes(StandardCharsets.UTF_8))
                .answer();
    }

    @Test
    void everyServerHasATokenOfItsOwn() throws IOException {
        try (ServedLogbook other = ServedLogbook.in(folder.resolve("other"))) {
            assertThat(new RawRequest(other.address(), "GET /")
                            .fromThisMachine()
                            .answer())
                    .doesNotContain(token());
        }
        assertThat(token()).hasSizeGreaterThanOrEqualTo(40);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/web/../server/PageServer.class",
                "/web/%2e%2e/%2e%2e/%2e%2e/logback.xml",
                "/web/..%2f..%2f..%2flogback.xml",
                "/web/%5c..%5c..%5clogback.xml",
                "/web//etc/passwd",
                "/web/library/../../PageServer.class",
                "/stints/../../etc/passwd",
                "/stints/%2e%2e%2f1",
                "/trials/..%2f1"
            })
    void noPathLeadsOut(String path) throws IOException {
        assertThat(request("GET " + path).fromThisMachine().answer())
                .startsWith("HTTP/1.1 4")
                .doesNotContain("root:", "CAFEBABE", "<configuration>");
    }

    @Test
    void whatTheBrowserSendsIsCountedWhileItComesIn() throws IOException {
        String token = token();
        String tooLong = request("POST /uploads?name=a.csv")
                .fromThisMachine()
                .header("Origin", origin())
                .header("Setwright-Token", token)
                .body(new byte[MOST + 1])
                .answer();
        assertThat(tooLong).startsWith("HTTP/1.1 413").contains("setwright add FILE");
        String fits = request("POST /uploads?name=a.csv")
                .fromThisMachine()
                .header("Origin", origin())
                .header("Setwright-Token", token)
                .body(new byte[MOST])
                .answer();
        assertThat(fits).startsWith("HTTP/1.1 200").contains("\"key\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "not json",
                "{}",
                "[]",
                "null",
                "{\"words\":null,\"stint\":0}",
                "{\"words\":\"a\",\"stint\":0,\"more\":1}",
                "{\"words\":{},\"stint\":0}"
            })
    void aRequestThatIsNotUnderstoodIsRefusedInWords(String body) throws IOException {
        long before = notes();
        assertThat(request("POST /notes")
                        .fromThisMachine()
                        .header("Origin", origin())
                        .header("Setwright-Token", token())
                        .body(body.getBytes(StandardCharsets.UTF_8))
                        .answer())
                .startsWith("HTTP/1.1 4")
                .contains("\"message\"");
        assertThat(notes()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/stints/99", "/stints/x", "/stints/99999999999999999999", "/nowhere", "/trials/7", "/jobs/x"})
    void whatIsNotThereIsSaidInWords(String path) throws IOException {
        assertThat(request("GET " + path)
                        .fromThisMachine()
                        .header("Accept", "text/html")
                        .answer())
                .startsWith("HTTP/1.1 4")
                .contains("That did not work.")
                .doesNotContain("Exception", "setwright.app", "Javalin", "Jetty");
        assertThat(request("GET " + path).fromThisMachine().answer()).contains("\"message\"");
    }

    @Test
    void jobsAreToldAsTheyGoOn() throws IOException {
        assertThat(request("GET /jobs/stream")
                        .fromThisMachine()
                        .header("Accept", "text/event-stream")
                        .answerUntil("data: []"))
                .startsWith("HTTP/1.1 200")
                .contains("text/event-stream", "event: jobs");
    }

    @Test
    void aPortThatIsTakenIsSaid() {
        int port = URI.create(served.address()).getPort();
        PageWork work = new PageWork(
                served.logbook(),
                new setwright.app.logbook.StintDesk(served.logbook(), setwright.core.judgement.Diagnostician::diagnose),
                setwright.core.proposal.Proposer::propose,
                setwright.app.predict.LapReplay::predict,
                MOST,
                java.util.Optional.empty());
        assertThatThrownBy(() -> PageServer.start(work, port))
                .isInstanceOf(PortTaken.class)
                .hasMessageContaining("port " + port + " is taken");
    }
}
