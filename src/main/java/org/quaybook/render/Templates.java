package org.quaybook.render;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;

/**
 * The templates that come with the program, and files of the user's own that take the place of single ones.
 *
 * <p>Templates are FreeMarker: {@code .ftlx} escapes for XML, {@code .ftlh} for HTML. They see the model and nothing
 * else: no Java class or method, no file outside the two folders, no network. Numbers print as a computer writes them;
 * what a reader sees is made by the caller's {@link TemplateFunction}s. Safe for use by several threads.
 */
public final class Templates {

    private static final String FOLDER = "templates";
    private static final Pattern SAFE_NAME =
            Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_.-]*(/[A-Za-z0-9_][A-Za-z0-9_.-]*)*");

    private static final Lazy<Templates> BUILT_IN = new Lazy<>(Templates::readBuiltIn);

    private final Configuration configuration;
    private final @Nullable Path overrides;

    private Templates(TemplateLoader loader, @Nullable Path overrides) {
        this.configuration = lockedDown(loader);
        this.overrides = overrides;
    }

    /** The program's own templates; each is read once, whoever asks. */
    public static Templates builtIn() {
        return BUILT_IN.get();
    }

    private static Templates readBuiltIn() {
        Templates builtIn = new Templates(ownTemplates(), null);
        builtIn.configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        return builtIn;
    }

    /**
     * The program's own templates, each replaced by the file of the same name in a folder if there is one.
     *
     * @throws UncheckedIOException if the folder cannot be read
     */
    public static Templates overriddenBy(Path folder) {
        try {
            Path real = folder.toRealPath();
            TemplateLoader theirs = new FileTemplateLoader(real.toFile(), false);
            return new Templates(new MultiTemplateLoader(new TemplateLoader[] {theirs, ownTemplates()}), real);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static TemplateLoader ownTemplates() {
        return new ClassTemplateLoader(Templates.class.getClassLoader(), FOLDER);
    }

    private static Configuration lockedDown(TemplateLoader loader) {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(loader);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setObjectWrapper(new TemplateModels());
        configuration.setRecognizeStandardFileExtensions(true);
        configuration.setLocalizedLookup(false);
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setNumberFormat("computer");
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        return configuration;
    }

    /**
     * Fills a template.
     *
     * @param name the template's path inside the folder; ends in {@code .ftlx} or {@code .ftlh}
     * @param model texts, numbers, booleans, lists, maps, {@link TemplateFunction}s and {@link InlineSvg}s
     * @throws RenderException if there is no such template, or it cannot be understood, or lacks a value: with the
     *     template's name and line
     */
    public String fill(String name, Map<String, ?> model) {
        if (!name.endsWith(".ftlx") && !name.endsWith(".ftlh")) {
            throw new IllegalArgumentException("a template that does not escape: " + name);
        }
        StringWriter out = new StringWriter();
        try {
            Template template = configuration.getTemplate(name);
            template.process(model, out);
        } catch (TemplateNotFoundException e) {
            throw RenderException.of(whole(name), e, RenderMessage.TEMPLATE_MISSING, e.getTemplateName());
        } catch (MalformedTemplateNameException | SecurityException e) {
            throw RenderException.of(whole(name), e, RenderMessage.TEMPLATE_MISSING, name);
        } catch (ParseException e) {
            Place place = place(e.getTemplateName(), name, e.getLineNumber(), e.getColumnNumber());
            throw RenderException.of(place, e, RenderMessage.TEMPLATE_SYNTAX, e.getEditorMessage());
        } catch (TemplateException e) {
            throw failed(name, e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static RenderException failed(String name, TemplateException e) {
        Place place = place(e.getTemplateSourceName(), name, e.getLineNumber(), e.getColumnNumber());
        String blamed = e.getBlamedExpressionString();
        return e instanceof InvalidReferenceException && blamed != null
                ? RenderException.of(place, e, RenderMessage.TEMPLATE_VALUE_MISSING, blamed)
                : RenderException.of(place, e, RenderMessage.TEMPLATE_FAILED, e.getMessageWithoutStackTop());
    }

    private static Place whole(String name) {
        return new Place(name, "", Position.START);
    }

    /** FreeMarker counts from 1 and may not know. */
    private static Place place(@Nullable String known, String asked, @Nullable Integer line, @Nullable Integer column) {
        return new Place(
                known == null ? asked : known,
                "",
                new Position(line == null ? 0 : Math.max(0, line - 1), column == null ? 0 : Math.max(0, column - 1)));
    }

    /**
     * A text file of the template folders as it is: a style sheet that a page carries within itself.
     *
     * @throws RenderException if there is none of that name
     */
    public String text(String name) {
        return file(name)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElseThrow(() -> RenderException.of(whole(name), null, RenderMessage.TEMPLATE_MISSING, name));
    }

    /** A file of the template folders as it is: a style sheet, a drawing. Empty when there is none of that name. */
    Optional<byte[]> file(String name) {
        if (!SAFE_NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        try {
            Optional<byte[]> theirs = overrides == null ? Optional.empty() : fileBelow(overrides, name);
            return theirs.isPresent() ? theirs : ownFile(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<byte[]> fileBelow(Path folder, String name) throws IOException {
        Path file = folder.resolve(name);
        // A symbolic link must not lead out of the folder.
        return Files.isRegularFile(file) && file.toRealPath().startsWith(folder)
                ? Optional.of(Files.readAllBytes(file))
                : Optional.empty();
    }

    private static Optional<byte[]> ownFile(String name) throws IOException {
        try (InputStream in = Templates.class.getClassLoader().getResourceAsStream(FOLDER + "/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        }
    }
}
