/**
 * The languages and units of readers. Words are written in English where they come to be,
 * and said in another language where they are shown: a phrasebook holds whole texts and
 * patterns with places, and what it can't say whole stays English.
 */
@ApplicationModule(displayName = "Language", allowedDependencies = { "measure", "knowledge" })
@NullMarked
package org.leafward.language;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
