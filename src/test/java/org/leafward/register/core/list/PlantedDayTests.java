package org.leafward.register.core.list;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.register.core.list.PlantedDay.Taken;

import static org.assertj.core.api.Assertions.assertThat;

class PlantedDayTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

	/**
	 * ISO 8601, the all-numeric forms of the United States, and dates in words as English
	 * and Spanish write them (Unicode CLDR has the names of months).
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "2019-05-01|2019-05-01|WHOLE", "2019-5-1|2019-05-01|WHOLE", "2019/05/01|2019-05-01|WHOLE",
					"2019-05-01 00:00:00|2019-05-01|WHOLE", "2019-05-01T08:30|2019-05-01|WHOLE",
					"5/21/2019|2019-05-21|WHOLE", "21/5/2019|2019-05-21|WHOLE", "21.5.2019|2019-05-21|WHOLE",
					"4/4/2019|2019-04-04|WHOLE", "5/21/19|2019-05-21|SHORT_YEAR", "5/21/27|2027-05-21|SHORT_YEAR",
					"5/21/28|1928-05-21|SHORT_YEAR", "5/21/98|1998-05-21|SHORT_YEAR", "May 2019|2019-05-01|MONTH",
					"Sept. 2019|2019-09-01|MONTH", "05/2019|2019-05-01|MONTH", "2019-05|2019-05-01|MONTH",
					"mayo de 2019|2019-05-01|MONTH", "ene 2020|2020-01-01|MONTH", "dic. 2020|2020-12-01|MONTH",
					"May 5, 2019|2019-05-05|WHOLE", "May 5th 2019|2019-05-05|WHOLE", "5 May 2019|2019-05-05|WHOLE",
					"5 de mayo de 2019|2019-05-05|WHOLE", "1 de septiembre del 2019|2019-09-01|WHOLE",
					"2019|2019-05-01|YEAR", "planted 2019|2019-05-01|YEAR", "since 1890|1890-05-01|YEAR",
					"planted in May 2019|2019-05-01|MONTH", "planted on 5/21/2019|2019-05-21|WHOLE",
					"plantado en 2019|2019-05-01|YEAR", "año 2019|2019-05-01|YEAR", "29 Feb 2020|2020-02-29|WHOLE" })
	void daysAsPeopleWriteThem(String text, LocalDate day, Taken taken) {
		assertThat(PlantedDay.read(text, DayOrder.UNKNOWN, TODAY)).contains(new PlantedDay(day, null, taken));
	}

	@Test
	void twoReadingsAreNeverSettledByAGuess() {
		assertThat(PlantedDay.read("3/4/2021", DayOrder.UNKNOWN, TODAY))
			.contains(new PlantedDay(LocalDate.of(2021, 3, 4), LocalDate.of(2021, 4, 3), Taken.EITHER));
		assertThat(PlantedDay.read("3.4.21", DayOrder.UNKNOWN, TODAY)).get()
			.extracting(PlantedDay::taken)
			.isEqualTo(Taken.EITHER);
		assertThat(PlantedDay.read("3/4/2021", DayOrder.MONTH_FIRST, TODAY)).get()
			.extracting(PlantedDay::day)
			.isEqualTo(LocalDate.of(2021, 3, 4));
		assertThat(PlantedDay.read("3/4/2021", DayOrder.DAY_FIRST, TODAY)).get()
			.extracting(PlantedDay::day)
			.isEqualTo(LocalDate.of(2021, 4, 3));
		assertThat(PlantedDay.read("13/4/2021", DayOrder.MONTH_FIRST, TODAY)).get()
			.extracting(PlantedDay::day)
			.isEqualTo(LocalDate.of(2021, 4, 13));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", " ", "soon", "31/2/2019", "2019-02-30", "29 Feb 2019", "13/13/2019", "1234", "2300",
			"12", "12 boxwood", "May apple", "May 5", "5/1", "12 2019", "2019 2020", "May June 2019", "99999999999999",
			"planted", "0/0/0000", "45000" })
	void whatIsNoDay(String text) {
		assertThat(PlantedDay.read(text, DayOrder.UNKNOWN, TODAY)).isEmpty();
	}

	@Test
	void everyIsoDayIsItself() {
		Random random = new Random(8601);
		for (int i = 0; i < 5000; i++) {
			LocalDate day = LocalDate.of(1700, 1, 1).plusDays(random.nextInt(182_000));
			assertThat(PlantedDay.read(day.toString(), DayOrder.UNKNOWN, TODAY))
				.contains(new PlantedDay(day, null, Taken.WHOLE));
		}
	}

}
