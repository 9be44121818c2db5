package setwright.app.server.view;

/**
 * What came of a request, or what went wrong with it, for the page's scripts to show.
 *
 * @param message  in a sentence
 */
public record Told(String message) {}
