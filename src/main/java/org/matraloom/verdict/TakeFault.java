package org.matraloom.verdict;

/**
 * One thing that went wrong.
 *
 * @param kind what it is
 * @param words what and where, a sentence
 * @param practice what helps
 */
record TakeFault(FaultKind kind, String words, PracticeAdvice practice) {}
