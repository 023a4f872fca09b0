package org.matraloom.log;

/** What a line of the log can be. */
sealed interface LogRecord permits Entry, Withdrawal {}
