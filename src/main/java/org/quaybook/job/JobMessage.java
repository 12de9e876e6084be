package org.quaybook.job;

import java.util.Locale;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.diag.Severity;
import org.quaybook.quantity.Kind;

/** What reading a job file may have to say. */
public enum JobMessage implements MessageKey {
    // The file as a whole.
    FILE_MISSING,
    FILE_UNREADABLE,
    FILE_TOO_LARGE,
    FILE_NOT_UTF8,
    FILE_EMPTY,
    TAB,
    UNSAFE_CHARACTER,
    SYNTAX,
    ANCHOR,
    ALIAS,
    TAG,
    SEVERAL_DOCUMENTS,
    TOO_DEEP,
    TOO_MANY_VALUES,
    TEXT_TOO_LONG,

    // Keys and the shape of values.
    UNKNOWN_KEY,
    DUPLICATE_KEY,
    MISSING_KEY,
    NO_VALUE,
    MAPPING_DUE,
    LIST_DUE,
    VALUE_DUE,

    // Values.
    BAD_NUMBER,
    BAD_WHOLE_NUMBER,
    DECIMAL_COMMA,
    BAD_QUANTITY,
    NO_UNIT,
    NO_UNIT_OF_ANY,
    NEGATIVE,
    UNKNOWN_UNIT,
    WRONG_DIMENSION,
    BAD_CONDUCTOR,
    BAD_CONDUCTORS,
    CONDUCTOR_OUT_OF_RANGE,
    BAD_YES_NO,
    BAD_DATE,
    BAD_MONTH,
    BAD_TIME_OF_DAY,
    BAD_RECORD_CODE,
    BAD_SEAL_KEY,
    NOT_ALLOWED,
    BAD_FORM,
    OUT_OF_RANGE,
    BAD_PROVENANCE,
    BAD_PROVENANCE_DETAIL,
    NOT_SEEN_WITH_VALUE,
    REFUSED,

    // Names.
    NAME_REPEATED,
    NAME_UNKNOWN,

    // Between values.
    NO_LANGUAGE,
    LABEL_LANGUAGES,
    SEALED_WITHOUT_KEY,
    SEAL_KEY_UNUSED,
    DONE_IN_THE_FUTURE,
    TAKE_OFF_MISSING,
    BANK_VOLTAGE,
    THRESHOLD_IMPOSSIBLE,
    SHORE_WHILE_OFF,
    ALARM_BELOW_CUT_OUT,
    CUT_OUT_AT_ONCE_ABOVE_CUT_OUT,
    RESTART_BELOW_CUT_OUT,
    RESTART_BELOW_ALARM(Severity.NOTE),
    CABLE_POLES_DIFFER,
    SHORT_TIME_BELOW_CONTINUOUS,
    PEAK_BELOW_DISCHARGE,
    EFFICIENCY_ORDER,
    AVERAGE_ABOVE_POWER,
    AVERAGE_ABOVE_LOAD,
    AVERAGE_AND_DUTY,
    OUTPUT_ABOVE_POWER,
    MORE_THAN_A_DAY,
    MORE_TIMES_THAN_USES,
    TIMES_WITHOUT_PER_USE,
    WISH_PAST_INVERTER,
    TOGETHER_PAST_INVERTER,
    TEST_AT_KIND,
    TEST_READING_KIND,
    TEST_TAKES_NO_VALUE,
    TEST_WITHOUT_RESULT,
    JOINT_PARTS,
    MAIN_FUSE_WITH,
    MAIN_FUSE_OF_NOTHING,
    STRING_FUSE_PROTECTS,
    THROUGH_OF_STRING,
    THROUGH_STRING,
    THROUGH_CIRCLE,
    THROUGH_BANK_AND_MORE,
    THROUGH_TWICE,
    READINGS_OF_OTHER_JOB,
    VISIT_BEFORE_HANDOVER,
    SERVICE_OF_OTHER_JOB,
    SERVICE_REVISION,
    SERVICE_DATE,
    DONE_AFTER_VISIT,
    SETTING_NEW(Severity.NOTE),
    SETTING_IN_FIGURES(Severity.NOTE),
    SETTING_SEASON,
    TEXT_NOT_IN_JOB(Severity.NOTE),
    TEXT_TRANSLATED_TWICE,

    // A stock of labels.
    STOCK_UNKNOWN,
    STOCK_FORM,
    STOCK_DOTS_MISSING,
    STOCK_SUM_ACROSS,
    STOCK_SUM_DOWN,
    STOCK_NO_ROOM,
    STOCK_CORNER,

    // Hints.
    MAKE_SEAL_KEY,
    SAY_SEALED,
    DID_YOU_MEAN,
    DID_YOU_MEAN_ONE_OF,
    WRITE,
    WRITE_EITHER,
    EXAMPLE,
    ALLOWED,
    COMMA_ENDS_VALUE,
    NOTHING_NAMED,
    LEAVE_OUT,
    SAME_COLUMN,
    COLON_AND_SPACE,
    NOT_CLOSED,
    QUOTE_TEXT,

    // Parts of sentences.
    WHOLE_FILE,
    DIMENSION_AIR_FLOW,
    DIMENSION_AREA,
    DIMENSION_CHARGE,
    DIMENSION_CURRENT,
    DIMENSION_ENERGY,
    DIMENSION_FREQUENCY,
    DIMENSION_LENGTH,
    DIMENSION_MASS,
    DIMENSION_POWER,
    DIMENSION_RESISTANCE,
    DIMENSION_SHARE,
    DIMENSION_TEMPERATURE,
    DIMENSION_TIME,
    DIMENSION_TORQUE,
    DIMENSION_VOLTAGE;

    private final Severity severity;

    JobMessage() {
        this(Severity.ERROR);
    }

    JobMessage(Severity severity) {
        this.severity = severity;
    }

    Severity severity() {
        return severity;
    }

    /** The name of a dimension. */
    static Message dimension(Kind<?> kind) {
        return Message.of(
                valueOf("DIMENSION_" + kind.name().toUpperCase(Locale.ROOT).replace(' ', '_')));
    }

    @Override
    public String key() {
        return "job." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
