/**
 * Winter chill of fruit trees and shrubs from hourly temperatures, measured or estimated.
 */
@NullMarked
package org.leafward.climate.core.chill;

import org.jspecify.annotations.NullMarked;
