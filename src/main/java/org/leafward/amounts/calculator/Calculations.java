package org.leafward.amounts.calculator;

import java.util.Map;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;

/** Asks calculators whose answers can be kept. */
public interface Calculations {

	/**
	 * The calculators.
	 * @return what they are about, by their name in addresses, for example "Salt in a
	 * bed" by "salt"
	 */
	Map<String, String> titles();

	/**
	 * Picks out what a calculator asks for.
	 * @param calculator its name in addresses
	 * @param given texts by name; others are left out, and so is what is empty
	 * @return in the order of the form
	 * @throws NotThere when there is no such calculator
	 * @throws BadInput when a text is longer than 300 characters or not on one line
	 */
	Map<String, String> inputs(String calculator, Map<String, String> given);

	/**
	 * Asks a calculator.
	 * @param calculator its name in addresses
	 * @param given as in {@link #inputs}
	 * @return its answer
	 * @throws NotThere when there is no such calculator
	 * @throws BadInput when something can't be used
	 */
	Calculation of(String calculator, Map<String, String> given);

}
