package setwright.fleet.spark;

import java.io.IOException;
import java.io.Serializable;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.SparkConf;
import org.apache.spark.deploy.SparkHadoopUtil;
import org.apache.spark.util.SerializableConfiguration;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Depots;

/** The two roots of a run, with what Hadoop needs to reach them; sent to workers. */
public final class Places implements Serializable {
    private final String in;
    private final String out;
    private final SerializableConfiguration configuration;

    /**
     * Makes them; properties {@code spark.hadoop.*} set up Hadoop's file systems.
     *
     * @throws IOException when no file system serves one of the addresses
     */
    public Places(String in, String out, SparkConf conf) throws IOException {
        Configuration hadoop = SparkHadoopUtil.get().newConfiguration(conf);
        // Workers run in folders of their own.
        this.in = Depots.open(in, hadoop).root();
        this.out = Depots.open(out, hadoop).root();
        this.configuration = new SerializableConfiguration(hadoop);
    }

    /** Opens the tree of recordings. */
    public Depot in() throws IOException {
        return Depots.open(in, configuration.value());
    }

    /** Opens the tables. */
    public Depot out() throws IOException {
        return Depots.open(out, configuration.value());
    }
}
