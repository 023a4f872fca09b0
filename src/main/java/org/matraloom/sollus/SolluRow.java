package org.matraloom.sollus;

import java.util.List;

/**
 * A line of the list: a sound with its spellings and its phones.
 *
 * @param name its name, which is its first spelling
 * @param spellings all of them in normal form
 * @param phones how it is said
 */
public record SolluRow(String name, List<String> spellings, List<String> phones) {}
