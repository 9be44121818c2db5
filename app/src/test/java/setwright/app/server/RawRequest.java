package setwright.app.server;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A request written byte by byte, so that headers may lie; clients of good manners do not let them. */
final class RawRequest {
    private final URI server;
    private final String line;
    private final List<String> headers = new ArrayList<>();
    private byte[] body = new byte[0];

    RawRequest(String address, String line) {
        this.server = URI.create(address);
        this.line = line;
    }

    RawRequest header(String name, String value) {
        headers.add(name + ": " + value);
        return this;
    }

    RawRequest fromThisMachine() {
        return header("Host", server.getAuthority());
    }

    RawRequest body(byte[] bytes) {
        body = bytes.clone();
        return header("Content-Length", String.valueOf(bytes.length));
    }

    /** Sends it and returns the whole answer. */
    String answer() throws IOException {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(20_000);
            String head = line + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
            try {
                socket.getOutputStream().write(body);
                socket.getOutputStream().flush();
            } catch (IOException e) {
                // refused before all was sent: the answer tells
            }
            return read(socket.getInputStream());
        }
    }

    private static String read(InputStream in) throws IOException {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }

    /** Sends it and returns what comes until some words have come. */
    String answerUntil(String words) throws IOException {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(20_000);
            String head = line + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\n\r\n";
            socket.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
            StringBuilder text = new StringBuilder();
            while (text.indexOf(words) < 0) {
                int read = socket.getInputStream().read();
                if (read < 0) {
                    break;
                }
                text.append((char) read);
            }
            return text.toString();
        }
    }
}
