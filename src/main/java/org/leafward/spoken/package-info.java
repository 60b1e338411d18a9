/**
 * Pages in the language and with the units of whoever reads them: the finished HTML is
 * said again, sentence by sentence, from a phrasebook. Templates and controllers know
 * nothing of it.
 */
@ApplicationModule(displayName = "Spoken", allowedDependencies = { "language", "measure", "pages", "pages :: print" })
@NullMarked
package org.leafward.spoken;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
