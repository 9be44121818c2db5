package setwright.app.server.guard;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Headers that forbid the browser everything that a page of ours does not need. */
public final class Headers {
    private static final Pattern STYLE = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL);

    private Headers() {}

    /** Sets them: scripts and styles from this server only, nothing from elsewhere, not shown inside another page, not stored. */
    public static void set(Context context) {
        context.header("Content-Security-Policy", policy("'self'"));
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        context.header("Cross-Origin-Resource-Policy", "same-origin");
        context.header("Cache-Control", "no-store");
    }

    /** Shows a document that brings its own style sheets: these, told by their digests, and no others. */
    public static void document(Context context, String html) {
        StringBuilder styles = new StringBuilder();
        Matcher matcher = STYLE.matcher(html);
        while (matcher.find()) {
            styles.append(styles.isEmpty() ? "" : " ")
                    .append("'sha256-")
                    .append(digest(matcher.group(1)))
                    .append('\'');
        }
        context.header("Content-Security-Policy", policy(styles.isEmpty() ? "'none'" : styles.toString()));
        context.html(html);
    }

    /** Widths and places of what is drawn are attributes of their elements. */
    private static String policy(String styles) {
        return "default-src 'none'; script-src 'self'; style-src " + styles + "; style-src-attr 'unsafe-inline'; "
                + "img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    }

    private static String digest(String text) {
        try {
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
