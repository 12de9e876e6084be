package org.quaybook.job;

import java.util.List;

/** Makes the tables of the format's reference page from the records. */
final class FormatPage {

    private final StringBuilder page = new StringBuilder();

    private FormatPage() {}

    static String tables() {
        FormatPage format = new FormatPage();
        format.page.append("## The job file\n");
        format.record(Job.class, "", 3);
        format.page.append("\n## The installer profile\n");
        format.record(Installer.class, "", 3);
        format.page.append("\n## The service log\n");
        format.record(ServiceLog.class, "", 3);
        return format.page.toString();
    }

    private void record(Class<?> record, String path, int level) {
        if (!path.isEmpty()) {
            page.append("\n")
                    .append("#".repeat(level))
                    .append(" `")
                    .append(path)
                    .append("`\n");
        }
        page.append("\n").append(record.getAnnotation(Means.class).value()).append("\n\n");
        page.append("| Key | Meaning | Value | Must it be written? | Example |\n|---|---|---|---|---|\n");
        List<Field> fields = Field.written(record);
        fields.forEach(this::row);
        fields.stream().filter(Field::isNested).forEach(field -> {
            String key = field.key() + (field.form() == Field.Form.LIST ? "[]" : "");
            record(field.type(), path.isEmpty() ? key : path + "." + key, path.isEmpty() ? level : level + 1);
        });
    }

    private void row(Field field) {
        String value = (field.isNested() && field.form() != Field.Form.LIST
                        ? "keys of its own"
                        : FormatWords.allowed(field, "<br>"))
                + (field.form() == Field.Form.GIVEN ? " †" : "");
        page.append("| `").append(field.key()).append("` | ");
        page.append(FormatWords.sentence(field.meaning())).append(" | ");
        page.append(value.replace("|", "\\|")).append(" | ");
        page.append(field.required() ? "yes" : "no").append(" | ");
        page.append(field.example().map(example -> "`" + example + "`").orElse(""))
                .append(" |\n");
    }
}
