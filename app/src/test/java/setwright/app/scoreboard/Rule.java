package setwright.app.scoreboard;

import java.util.List;

/** Compares one side of an answer with the truth. What could be hit comes from the truth alone, answered or not. */
interface Rule {
    List<Row> judge(StintRun run);
}
