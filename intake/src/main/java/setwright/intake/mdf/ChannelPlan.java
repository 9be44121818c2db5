package setwright.intake.mdf;

/**
 * A channel that becomes a column.
 *
 * @param header      its name
 * @param unit        of its converted values; empty when the file names none
 * @param raw         where its raw values are
 * @param conversion  what they mean
 * @param invalidBit  number of the bit, behind the values of a record, that says that its value is invalid; negative for none
 * @param allInvalid  tells that none of its values is valid
 * @param master      what it is the axis of, when it is one
 */
record ChannelPlan(
        String header,
        String unit,
        RawValue raw,
        Conversion conversion,
        int invalidBit,
        boolean allInvalid,
        Master master) {

    /** What a channel is the axis of: {@code cn_sync_type} of master channels. */
    enum Master {
        /** No axis. */
        NONE,
        /** Seconds. */
        TIME,
        /** Angle, distance or index. */
        OTHER
    }

    ChannelPlan named(String name) {
        return new ChannelPlan(name, unit, raw, conversion, invalidBit, allInvalid, master);
    }
}
