/**
 * Pages and documents of advisories.
 */
@NullMarked
package org.leafward.advisories.web;

import org.jspecify.annotations.NullMarked;
