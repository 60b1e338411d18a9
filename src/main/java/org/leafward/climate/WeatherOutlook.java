package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The weather of one place as it is seen on one day. Figures are looked up once, when the
 * first question needs them, so that many questions cost little more than one. Not for
 * use by several threads.
 */
public interface WeatherOutlook {

	/**
	 * Every state that has a name.
	 * @return one for each, in order
	 */
	List<WeatherState> named();

	/**
	 * The answer to a question as of today; what is forecast is looked at for today and
	 * the three days after it.
	 * @param question what is asked
	 * @return the state under the question's own code
	 */
	WeatherState answer(StateQuestion question);

	/**
	 * The answer for one day alone. Of what is forecast only that day counts; what looks
	 * back takes the forecast of the days between for fallen; drought and ground are
	 * taken as they are today.
	 * @param day today or a day to come
	 * @param question what is asked
	 * @return not known where the forecast doesn't reach
	 */
	WeatherState on(LocalDate day, StateQuestion question);

	/**
	 * The lowest temperature that is forecast for a day, in a shelter at the place.
	 * @param day today or a day to come
	 * @return °C, with the height and the microclimate of the place in it; empty where
	 * the forecast doesn't reach
	 */
	OptionalDouble lowest(LocalDate day);

}
