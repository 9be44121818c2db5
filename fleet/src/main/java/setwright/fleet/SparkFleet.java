package setwright.fleet;

import java.io.IOException;
import java.util.function.Consumer;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.SparkSession;
import setwright.app.fleet.FleetCount;
import setwright.app.fleet.FleetEngine;
import setwright.app.fleet.FleetRequest;
import setwright.app.fleet.SummaryRequest;
import setwright.fleet.depot.TemporaryFolder;
import setwright.fleet.spark.Crew;
import setwright.fleet.spark.Places;
import setwright.fleet.spark.Settings;
import setwright.fleet.spark.WorkersHome;
import setwright.fleet.summary.Summarizer;
import setwright.fleet.summary.Summary;
import setwright.fleet.summary.SummaryJson;
import setwright.fleet.summary.SummaryText;

/** The engine that the command line finds. */
public final class SparkFleet implements FleetEngine {
    @Override
    public FleetCount diagnose(FleetRequest request, Consumer<String> told) throws IOException {
        if (request.workers() > 0 && !WorkersHome.isHome()) {
            return Apart.diagnose(request);
        }
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-spark")) {
            SparkConf conf = request.workers() > 0
                    ? Settings.workers(request.workers(), folder.path())
                    : Settings.of(request.master(), folder.path());
            Places places = new Places(request.in(), request.out(), conf);
            return new Run(request, places.in(), places.out(), () -> new Crew(conf, places), told).run();
        }
    }

    @Override
    public String summary(SummaryRequest request) throws IOException {
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-spark")) {
            SparkConf conf = Settings.of(request.master(), folder.path());
            Places places = new Places(request.in(), request.in(), conf);
            try (SparkSession spark = SparkSession.builder().config(conf).getOrCreate()) {
                Summary summary = Summarizer.of(spark, places.in(), request.driver(), request.circuit());
                return request.json() ? SummaryJson.write(summary) : SummaryText.write(summary);
            }
        }
    }
}
