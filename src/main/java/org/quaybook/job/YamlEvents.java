package org.quaybook.job;

import com.fasterxml.jackson.core.ObjectCodec;
import com.fasterxml.jackson.core.io.IOContext;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;

/**
 * Reads YAML by Jackson and gives the event behind each token: the token alone does not tell the anchor of a scalar, so
 * that {@code name: &Sons Ltd} would silently become {@code Ltd}.
 */
final class YamlEvents {

    private static final Factory FACTORY = new Factory();

    private final Tokens tokens;

    private YamlEvents(Tokens tokens) {
        this.tokens = tokens;
    }

    static YamlEvents of(String text) throws IOException {
        return new YamlEvents((Tokens) FACTORY.createParser(new StringReader(text)));
    }

    /** The next event that is part of a document's content; null at the end. */
    @Nullable Event next() throws IOException {
        return tokens.nextToken() == null ? null : tokens.event();
    }

    /** The next event inside a mapping or list, which cannot be the end of the text. */
    Event inside() throws IOException {
        Event event = next();
        if (event == null) {
            throw new NoSuchElementException("the parser ended inside a mapping or list");
        }
        return event;
    }

    /** The event read last, also after the parser has refused it. */
    Event last() {
        return tokens.event();
    }

    private static final class Factory extends YAMLFactory {
        private static final long serialVersionUID = 1;

        @Override
        protected YAMLParser _createParser(Reader reader, IOContext context) {
            return new Tokens(context, _parserFeatures, _yamlParserFeatures, _loaderOptions, _objectCodec, reader);
        }
    }

    private static final class Tokens extends YAMLParser {

        Tokens(
                IOContext context,
                int features,
                int yamlFeatures,
                LoaderOptions options,
                @Nullable ObjectCodec codec,
                Reader reader) {
            super(context, features, yamlFeatures, options, codec, reader);
        }

        Event event() {
            return _lastEvent;
        }
    }
}
