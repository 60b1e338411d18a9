/**
 * What a test of the soil says about salt and sodium, and how much gypsum answers it.
 */
@NamedInterface("soiltest")
@NullMarked
package org.leafward.amounts.soiltest;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
