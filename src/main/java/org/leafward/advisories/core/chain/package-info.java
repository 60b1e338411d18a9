/**
 * What is decided about advisories without looking anything up. Pure.
 */
@NamedInterface("chain")
@NullMarked
package org.leafward.advisories.core.chain;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
