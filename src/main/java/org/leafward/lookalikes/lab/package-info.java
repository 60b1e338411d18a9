/** Diagnostic laboratories, as config/laboratories has them. */
@NullMarked
package org.leafward.lookalikes.lab;

import org.jspecify.annotations.NullMarked;
