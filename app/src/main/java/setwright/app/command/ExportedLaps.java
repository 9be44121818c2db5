package setwright.app.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.diagnose.SameCircuit;
import setwright.app.evidence.Answer;
import setwright.app.export.Material.Laps;
import setwright.app.logbook.StintDesk;
import setwright.app.logbook.StintDesk.KeptLaps;
import setwright.app.propose.ChangeProposer;
import setwright.core.proposal.LearntEffects;
import setwright.intake.gather.RecordingFiles;

/** Judges the laps that are to be taken out; unlike other commands it notes nothing in the logbook. */
record ExportedLaps(CommandSpec spec, LapChoice choice, Diagnoser diagnoser, DeskOpener desk, ChangeProposer proposer) {

    /**
     * Judges recordings, or stints of the logbook.
     *
     * @param named     files or numbers; none for the last stint
     * @param proposes  whether items are to be turned on the laps
     */
    List<Laps> judged(List<String> named, boolean proposes) throws IOException {
        int steps = Math.max(1, named.size()) * (Diagnoser.STEPS + (proposes ? 1 : 0));
        try (Progress progress = ProgressLine.of(steps)) {
            return named.stream().allMatch(text -> LapChoice.namesStint(Optional.of(text)))
                    ? kept(named, proposes, progress)
                    : files(named, proposes, progress);
        }
    }

    private List<Laps> kept(List<String> named, boolean proposes, Progress progress) throws IOException {
        StintDesk stints = desk.open(choice.openLogbook());
        List<KeptLaps> wanted = named.isEmpty()
                ? List.of(choice.kept(Optional.empty(), stints))
                : named.stream()
                        .map(text -> choice.kept(Optional.of(text), stints))
                        .toList();
        List<Laps> laps = new ArrayList<>();
        for (KeptLaps one : wanted) {
            String number = String.valueOf(one.stint().number());
            laps.add(laps(number, one.answer(progress), proposes, one.learnt(), progress));
        }
        return laps;
    }

    /** All on the circuit of the first, so that corner 4 is the same in all. */
    private List<Laps> files(List<String> named, boolean proposes, Progress progress) throws IOException {
        if (proposes) {
            choice.car().required(spec, CarOption.ITEMS.orElseThrow());
        }
        List<RecordingFiles> files = choice.recordings(named);
        List<Answer> answers = SameCircuit.diagnose(
                diagnoser,
                files.stream()
                        .map(file -> DiagnoseRequest.of(
                                        file,
                                        choice.car().path(),
                                        choice.reading().map(),
                                        choice.reading().circuit())
                                .against(choice.baseline().file()))
                        .toList(),
                progress);
        List<Laps> laps = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            laps.add(laps(files.get(i).name(), answers.get(i), proposes, LearntEffects.none(), progress));
        }
        return laps;
    }

    private Laps laps(String stint, Answer answer, boolean proposes, LearntEffects learnt, Progress progress) {
        if (!proposes) {
            return new Laps(stint, answer, Optional.empty());
        }
        progress.step("turning each item on the laps");
        return new Laps(stint, answer, Optional.of(proposer.propose(answer.diagnosis(), answer.car(), learnt)));
    }
}
