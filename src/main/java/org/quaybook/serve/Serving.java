package org.quaybook.serve;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * What is served, where, and who hears of it.
 *
 * @param site the folder of published records
 * @param address what to listen on: a name or number of this machine
 * @param port 0 to 65535; 0 takes any free one
 * @param canonical the code of a record as its folder is named, from a code as people type it; empty for what is no code.
 *     Gives letters and digits only.
 * @param log hears a line about each answer: time (UTC, ISO 8601), method, path, status, bytes of the body, milliseconds.
 *     Of a record's code the path shows the last four symbols, for the code is the key to the record.
 * @param addresses whether the line ends with the asker's address
 * @param faults hears what kept the server from giving an answer
 * @param clock the time, for the log and to know files that were just written
 */
public record Serving(
        Path site,
        String address,
        int port,
        Function<String, Optional<String>> canonical,
        Optional<Consumer<String>> log,
        boolean addresses,
        Consumer<Throwable> faults,
        InstantSource clock) {}
