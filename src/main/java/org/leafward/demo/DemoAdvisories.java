package org.leafward.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Area;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.Response;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.Issuing;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Two advisories that the invented specialist sent: one that is in force, and one that
 * was changed and is over. What they speak of fits the half of the year.
 */
@Component
@Profile("demo")
class DemoAdvisories {

	private static final String MERROW = "us-ia-merrow-county";

	private static final String SABLE = "us-ia-sable-county";

	private static final int PAST_DAYS = 24;

	private final Issuing issuing;

	private final People people;

	private final HowToTell howToTell;

	DemoAdvisories(Issuing issuing, People people, HowToTell howToTell) {
		this.issuing = issuing;
		this.howToTell = howToTell;
		this.people = people;
	}

	/**
	 * Sends them.
	 * @param today the day of the demo
	 */
	void send(LocalDate today) {
		UUID odile = this.people.withAddress("odile.marsh@example.org").orElseThrow().id().value();
		wakeful(new PersonId(odile), Map.of(Wishes.MAIL, Map.of(Topic.ADVISORY, Wish.of(Manner.SINGLE))));
		this.people.withAddress("ines.farrow@example.org").ifPresent((ines) -> wakeful(ines.id(), Map.of()));
		Issuing.Hands hands = new Issuing.Hands(odile, null);
		boolean warm = today.getMonthValue() >= Month.APRIL.getValue()
				&& today.getMonthValue() < Month.OCTOBER.getValue();
		LocalDate then = today.minusDays(PAST_DAYS);
		UUID past = UUID.randomUUID();
		Message first = this.issuing.send(past, MessageType.ALERT, warm ? lateFreeze(then, 8) : hardFreeze(then, 8),
				null, hands, at(then, 15));
		this.issuing.send(past, MessageType.UPDATE, warm ? lateFreeze(then, 10) : hardFreeze(then, 10),
				"The clouds left later than expected: it stays cold two hours longer.", hands,
				first.link().sentAt().plusSeconds(5 * 3600L));
		this.issuing.send(UUID.randomUUID(), MessageType.ALERT, warm ? hotWind(today) : dryGround(today), null, hands,
				at(today.minusDays(1), 9));
	}

	/**
	 * Without quiet hours, so that a mail stands in the outbox whenever the demo is
	 * started.
	 */
	private void wakeful(PersonId person, Map<String, Map<Topic, Wish>> chosen) {
		Wishes usual = this.howToTell.of(person);
		this.howToTell.save(person,
				new Wishes(usual.speech(), usual.morning(), usual.outlookDay(),
						new QuietHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT), usual.urgentAnyway(),
						usual.pausedUntil(), chosen, usual.stopped()));
	}

	private static Instant at(LocalDate day, int hour) {
		return day.atTime(hour, 0).atZone(DemoRegion.zone()).toInstant();
	}

	private static Content lateFreeze(LocalDate day, int untilHour) {
		return new Content("late-freeze", new Bilingual("Late freeze", "Helada tardía"),
				facts(Response.SHELTER, Severity.MODERATE), Area.of(Set.of(MERROW, SABLE)),
				new PlantChoice(Set.of("fruit-tree", "vegetable-tender", "annual-tender"), Set.of(), Set.of()),
				Set.of("cover", "move"), at(day.plusDays(1), 2), at(day.plusDays(1), untilHour), DemoRegion.zone(),
				new AdvisoryText("Freeze before sunrise: cover blossoms and seedlings tonight",
						"27 °F (−3 °C) in hollows of Merrow and Sable County, with clear sky and no wind.",
						"Merrow County and the inland part of Sable County. The lake shore stays warmer.",
						"From two hours after midnight until %d in the morning.".formatted(untilHour),
						"Open blossoms of peach and apple, and tomatoes that were set out, can be lost in one night.",
						"Cover before sunset, down to the ground, and take covers off in the morning. Carry pots in. "
								+ "Water dry soil at noon. Never heat under a cover with an open flame."),
				new AdvisoryText("Helada antes del amanecer: cubra esta noche flores y plántulas",
						"−3 °C (27 °F) en las hondonadas de los condados Merrow y Sable, con cielo despejado y sin viento.",
						"El condado Merrow y el interior del condado Sable. En la orilla del lago hace menos frío.",
						"Desde dos horas después de medianoche hasta las %d de la mañana.".formatted(untilHour),
						"En una noche pueden perderse las flores abiertas del durazno y del manzano, y los tomates ya plantados.",
						"Cubra antes de la puesta del sol, hasta el suelo, y destape por la mañana. Meta las macetas. "
								+ "Riegue a mediodía el suelo seco. Nunca caliente con llama bajo una cubierta."));
	}

	private static Content hardFreeze(LocalDate day, int untilHour) {
		return new Content("first-freeze", new Bilingual("First hard freeze", "Primera helada fuerte"),
				facts(Response.SHELTER, Severity.MODERATE), Area.of(Set.of(MERROW, SABLE)),
				new PlantChoice(Set.of("tender-bulb", "vegetable-tender", "vegetable-half-hardy"), Set.of(), Set.of()),
				Set.of("cover", "lift", "move"), at(day.plusDays(1), 1), at(day.plusDays(1), untilHour),
				DemoRegion.zone(),
				new AdvisoryText("First hard freeze tonight: bring in pots, lift dahlias soon",
						"25 °F (−4 °C) on the ridge and 28 °F (−2 °C) at the lake, the first of this fall.",
						"Merrow and Sable County.",
						"From one hour after midnight until %d in the morning.".formatted(untilHour),
						"It ends what is left of tender vegetables. Dahlias and cannas blacken; their roots are still sound.",
						"Bring pots in. Cover lettuce for a few weeks more. Drain hoses. Lift dahlias and cannas within "
								+ "two weeks, after the tops have blackened."),
				new AdvisoryText("Primera helada fuerte esta noche: meta las macetas y saque pronto las dalias",
						"−4 °C (25 °F) en la loma y −2 °C (28 °F) junto al lago, la primera de este otoño.",
						"Condados Merrow y Sable.",
						"Desde una hora después de medianoche hasta las %d de la mañana.".formatted(untilHour),
						"Acaba con lo que queda de las hortalizas delicadas. Dalias y cañas se ennegrecen; sus raíces siguen sanas.",
						"Meta las macetas. Cubra la lechuga unas semanas más. Vacíe las mangueras. Saque dalias y cañas "
								+ "en dos semanas, cuando lo de arriba esté negro."));
	}

	private static Content hotWind(LocalDate today) {
		return new Content("hot-dry-wind", new Bilingual("Hot dry wind", "Viento seco y caliente"),
				facts(Response.EXECUTE, Severity.MODERATE), Area.of(Set.of(MERROW, SABLE)),
				new PlantChoice(Set.of("woody", "vegetable"), Set.of(), Set.of()), Set.of("water", "cover"),
				at(today, 8), at(today.plusDays(2), 20), DemoRegion.zone(),
				new AdvisoryText("Hot, dry wind for three days: water what was planted this year",
						"96 °F (36 °C) with wind from the southwest and dry air.", "Merrow and Sable County.",
						"Three days, worst in the afternoons.",
						"Leaves of young trees and large-leaved vegetables scorch at the edges when roots can't keep up.",
						"Water deeply in the early morning, young trees first. Shade what was set out this month. Don't "
								+ "spray or feed in the heat. Work early, drink, and rest in the shade."),
				new AdvisoryText("Viento seco y caliente por tres días: riegue lo plantado este año",
						"36 °C (96 °F) con viento del suroeste y aire seco.", "Condados Merrow y Sable.",
						"Tres días, lo peor por las tardes.",
						"Las hojas de árboles jóvenes y de hortalizas de hoja grande se queman en el borde.",
						"Riegue a fondo temprano por la mañana, primero los árboles jóvenes. Dé sombra a lo plantado "
								+ "este mes. No rocíe ni abone con calor. Trabaje temprano, beba y descanse a la sombra."));
	}

	private static Content dryGround(LocalDate today) {
		return new Content("dry-before-freeze",
				new Bilingual("Dry ground before it freezes", "Suelo seco antes de helarse"),
				facts(Response.EXECUTE, Severity.MODERATE), Area.of(Set.of(MERROW, SABLE)),
				new PlantChoice(Set.of("evergreen"), Set.of(), Set.of()), Set.of("water"), at(today, 0),
				at(today.plusDays(7), 0), DemoRegion.zone(),
				new AdvisoryText("Last chance to water evergreens before the ground freezes",
						"The root zone is dry, little rain is coming, and frozen ground is about a week away.",
						"Merrow and Sable County, sandy ground first.", "In the days until the ground freezes.",
						"Evergreens that go dry into frozen ground turn brown in March, the youngest first.",
						"Water slowly and deeply at midday while the air is above 40 °F (4 °C), about an inch (25 mm) "
								+ "over the roots. Leave wet ground alone. Drain hoses afterwards."),
				new AdvisoryText("Última ocasión de regar los siempreverdes antes de que el suelo se hiele",
						"La zona de raíces está seca, viene poca lluvia y falta cerca de una semana para que el suelo se hiele.",
						"Condados Merrow y Sable, primero los suelos arenosos.",
						"En los días que faltan para que el suelo se hiele.",
						"El siempreverde que entra seco en suelo helado se pone café en marzo, primero el más joven.",
						"Riegue despacio y a fondo a mediodía, con más de 4 °C (40 °F) en el aire: unos 25 mm (1 pulgada) "
								+ "sobre las raíces. No riegue suelo mojado. Después vacíe las mangueras."));
	}

	private static AlertFacts facts(Response response, Severity severity) {
		return new AlertFacts(Category.MET, Set.of(Response.PREPARE, response), Urgency.FUTURE, severity,
				Certainty.LIKELY);
	}

}
