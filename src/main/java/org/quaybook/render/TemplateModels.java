package org.quaybook.render;

import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateDirectiveModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.utility.DeepUnwrap;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Lets data, {@link TemplateFunction}s and {@link InlineSvg}s into a template and nothing else: no Java object, class or method. */
final class TemplateModels extends SimpleObjectWrapper {

    TemplateModels() {
        super(Configuration.VERSION_2_3_34);
    }

    @Override
    public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
        if (value instanceof TemplateFunction function) {
            return (TemplateMethodModelEx) arguments -> function.apply(plain(arguments));
        }
        if (value instanceof InlineSvg svg) {
            return (TemplateDirectiveModel) (environment, parameters, loopVariables, body) ->
                    environment.getOut().write(svg.text());
        }
        if (value == null
                || value instanceof TemplateModel
                || value instanceof String
                || value instanceof Number
                || value instanceof Boolean
                || value instanceof Map
                || value instanceof Collection) {
            return super.wrap(value);
        }
        throw new TemplateModelException(
                "a template takes texts, numbers, booleans, lists, maps and functions and drawings, not "
                        + value.getClass().getName());
    }

    private static List<Object> plain(List<?> arguments) throws TemplateModelException {
        List<Object> plain = new ArrayList<>();
        for (Object argument : arguments) {
            Object value = DeepUnwrap.unwrap((TemplateModel) argument);
            if (value == null) {
                throw new TemplateModelException("an argument of a function is missing");
            }
            plain.add(value);
        }
        return plain;
    }
}
