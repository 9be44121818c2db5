package setwright.benchmarks.growth;

/** What a diagnosis from a file consists of. */
enum Part {
    READ("read and understand"),
    LAPS("laps, line, corners"),
    DIAGNOSIS("diagnosis"),
    WHOLE("whole");

    private final String words;

    Part(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
