package setwright.app.server.guard;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntSupplier;

/*
 * Design note. A page on the loopback address can be reached by every site that the browser has open. Three things keep them out: the Host
 * header must name this machine (a name that somebody points at 127.0.0.1 does not), a request that changes something must come from our own
 * origin, and it must bring a token that only a page of ours can have read. OWASP, "Cross-Site Request Forgery Prevention" and "DNS
 * rebinding" describe the attacks.
 */

/** Lets requests in that come from this machine and, where they change something, from a page of this server. */
public final class Guard {
    /** The header that carries the token. */
    public static final String TOKEN_HEADER = "Setwright-Token";

    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);
    /** Where a request came from as browsers tell it (W3C, Fetch Metadata Request Headers); the address bar counts as our own. */
    private static final Set<String> OWN = Set.of("same-origin", "none");

    private static final int TOKEN_BYTES = 32;

    private final IntSupplier port;
    private final String token;

    /**
     * Makes one with a token of its own.
     *
     * @param port  that the server listens on, known once it does
     */
    public Guard(IntSupplier port) {
        this.port = port;
        byte[] bytes = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(bytes);
        this.token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Returns what a page of ours brings along when it changes something. */
    public String token() {
        return token;
    }

    /**
     * Checks a request.
     *
     * @throws ForbiddenResponse when it is not let in
     */
    public void check(Context request) {
        List<String> hosts = List.of("127.0.0.1:" + port.getAsInt(), "localhost:" + port.getAsInt());
        if (!hosts.contains(Objects.requireNonNullElse(request.header("Host"), ""))) {
            throw new ForbiddenResponse("This page answers only on this machine, at http://" + hosts.get(0) + "/.");
        }
        String from = Objects.requireNonNullElse(request.header("Sec-Fetch-Site"), "none");
        boolean followedALink = "navigate".equals(request.header("Sec-Fetch-Mode"))
                && "document".equals(request.header("Sec-Fetch-Dest"));
        if (!OWN.contains(from) && !followedALink) {
            throw new ForbiddenResponse("Only a page of this program may ask for this.");
        }
        if (READING.contains(request.method())) {
            return;
        }
        String origin = Objects.requireNonNullElse(request.header("Origin"), "");
        if (hosts.stream().noneMatch(host -> origin.equals("http://" + host))) {
            throw new ForbiddenResponse("Only a page of this program may change something.");
        }
        if (!isToken(Objects.requireNonNullElse(request.header(TOKEN_HEADER), ""))) {
            throw new ForbiddenResponse(
                    "This page is from before the program was last started. Load it again, then try once more.");
        }
    }

    /** Takes the same time wherever the two differ. */
    private boolean isToken(String given) {
        return MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }
}
