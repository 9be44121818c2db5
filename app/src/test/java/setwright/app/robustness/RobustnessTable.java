package setwright.app.robustness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.app.simulate.Simulation;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.simulation.truth.TrueProblem;

/** Prints how answers hold: cases by variants, as a table of docs/judgement.md. */
final class RobustnessTable {
    private record Case(String car, long circuit, Optional<String> fault) {}

    private static final List<Case> CASES = List.of(
            new Case("orvane", 101L, Optional.of("rear end too stiff in roll")),
            new Case("orvane", 102L, Optional.of("front end too stiff in roll")),
            new Case("orvane", 103L, Optional.of("brake bias too far rearward")),
            new Case("pirrel", 104L, Optional.of("too little rear wing")),
            new Case("pirrel", 105L, Optional.of("front end too stiff in roll")),
            new Case("vessane", 106L, Optional.of("too much rear wing")),
            new Case("hobbrick", 107L, Optional.of("rear bar too stiff")),
            new Case("orvane", 101L, Optional.empty()),
            new Case("pirrel", 104L, Optional.empty()),
            new Case("hobbrick", 107L, Optional.empty()));

    private RobustnessTable() {}

    /** Runs all cases, or those whose numbers (from 1) are given. */
    public static void main(String[] arguments) throws IOException {
        List<Integer> chosen = List.of(arguments).stream().map(Integer::valueOf).toList();
        Path folder = Files.createTempDirectory("setwright-robustness");
        Simulation simulation = new Simulation();
        List<String> columns = new ArrayList<>();
        for (Variant variant : Variant.values()) {
            columns.add(variant.words());
        }
        System.out.println("| case | true | " + String.join(" | ", columns) + " | three laps |");
        System.out.println("|---".repeat(columns.size() + 3) + "|");
        for (int i = 0; i < CASES.size(); i++) {
            if (chosen.isEmpty() || chosen.contains(i + 1)) {
                System.out.println(row(CASES.get(i), simulation, folder));
            }
        }
        Files.delete(folder);
    }

    private static String row(Case one, Simulation simulation, Path folder) throws IOException {
        Stint stint = Stint.drive(simulation, one.car, one.circuit, one.fault, Stint.LAPS);
        Optional<TrueProblem> truth = one.fault.map(
                fault -> stint.truth(Stint.drive(simulation, one.car, one.circuit, Optional.empty(), Stint.LAPS)));
        StringBuilder row = new StringBuilder("| ")
                .append(one.car)
                .append(", ")
                .append(one.fault.orElse("balanced"))
                .append(" | ")
                .append(truth.map(RobustnessTable::words).orElse("nothing"));
        for (Variant variant : Variant.values()) {
            row.append(" | ").append(words(stint.diagnosed(variant, folder), truth));
        }
        Stint few = Stint.drive(simulation, one.car, one.circuit, one.fault, 3);
        row.append(" | ").append(words(few.diagnosed(Variant.AS_IT_SHOULD_BE, folder), truth));
        return row.append(" |").toString();
    }

    private static String words(TrueProblem problem) {
        return problem.sign().words().toLowerCase(Locale.ROOT) + " " + phases(problem) + " "
                + String.format(
                        Locale.ROOT,
                        "%.1f deg%s",
                        Math.toDegrees(problem.strengthRad()),
                        problem.weak() ? ", weak" : "");
    }

    private static String phases(TrueProblem problem) {
        return problem.acceptPhases().stream()
                .sorted()
                .map(phase -> phase.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    private static String words(Diagnosis diagnosis, Optional<TrueProblem> truth) {
        Held held = Held.of(diagnosis, truth);
        return held.words()
                + (held == Held.NOT_ENOUGH
                        ? ""
                        : diagnosis.findings().stream()
                                .filter(Finding::lapWide)
                                .findFirst()
                                .map(finding -> String.format(
                                        Locale.ROOT,
                                        ": %s %.2f",
                                        finding.phase().name().toLowerCase(Locale.ROOT),
                                        finding.probability()))
                                .orElse(""));
    }
}
