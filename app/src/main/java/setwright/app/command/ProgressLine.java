package setwright.app.command;

import java.util.Optional;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import setwright.app.diagnose.Progress;
import setwright.app.text.Terminal;

/** A progress bar on standard error; nothing where that is no terminal. */
final class ProgressLine implements Progress {
    private static final int STANDARD_ERROR = 2;

    private final Optional<ProgressBar> bar;
    private boolean begun;

    private ProgressLine(Optional<ProgressBar> bar) {
        this.bar = bar;
    }

    /** Starts a bar of so many steps. */
    static Progress of(int steps) {
        if (!Terminal.isTerminal(STANDARD_ERROR)) {
            return Progress.silent();
        }
        return new ProgressLine(Optional.of(new ProgressBarBuilder()
                .setTaskName("Reading")
                .setInitialMax(steps)
                .setStyle(ProgressBarStyle.ASCII)
                .clearDisplayOnFinish()
                .build()));
    }

    @Override
    public void step(String what) {
        bar.ifPresent(shown -> {
            if (begun) {
                shown.step();
            }
            begun = true;
            shown.setExtraMessage(what);
        });
    }

    @Override
    public void close() {
        bar.ifPresent(ProgressBar::close);
    }
}
