/**
 * Workdays of volunteer groups: who comes when, what is done on which day and where, and
 * what the weather has to say about it. Never dates a task itself, that is care's, and
 * never talks to a mail server: messages are written here and handed on by whoever owns
 * mail.
 */
@ApplicationModule(displayName = "Workdays",
		allowedDependencies = { "care", "care :: rule", "register", "climate", "climate :: comfort", "climate :: light",
				"plants", "accounts", "calendars", "knowledge", "language", "pages", "pages :: print", "measure" })
@NullMarked
package org.leafward.workdays;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
