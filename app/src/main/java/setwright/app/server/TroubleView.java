package setwright.app.server;

import setwright.app.server.view.Frame;

/**
 * What the page shows of something that went wrong.
 *
 * @param frame    around it
 * @param message  what, where and what to do
 */
public record TroubleView(Frame frame, String message) {}
