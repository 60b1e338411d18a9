package org.leafward.advisories.cap;

import java.net.URI;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.Response;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/** Alerts for tests, invented. */
public final class CapSamples {

	private static final List<String> WORDS = List.of("freeze", "‹tulipán›", "a & b < c", "\"−3 °C\"", "ñandú", "]]>",
			"línea\nnueva", "🌱", "O’Hara", "50 %");

	private static final List<String> ZONES = List.of("America/Chicago", "UTC", "Europe/London", "Asia/Kolkata",
			"Pacific/Auckland", "America/St_Johns");

	private CapSamples() {
	}

	public static CapAlert freeze() {
		Instant sent = Instant.parse("2027-04-20T20:00:00Z");
		return new CapAlert("urn:uuid:0b0e6f0e-6f0d-4f7e-8d0b-5e5b0d2f0a11", "advisories@garden.example", sent,
				ZoneId.of("America/Chicago"), CapAlert.Status.ACTUAL, MessageType.ALERT, "Leafward", "",
				"late-freeze-1",
				new AlertFacts(Category.MET, Set.of(Response.SHELTER, Response.PREPARE), Urgency.FUTURE,
						Severity.MODERATE, Certainty.LIKELY),
				"Late freeze", Instant.parse("2027-04-21T07:00:00Z"), Instant.parse("2027-04-21T14:00:00Z"),
				List.of(new CapAlert.Text("en-US", "Late freeze", "Freeze tonight: cover what blooms",
						"WHAT: 27 °F (−3 °C) before sunrise.\nWHERE: Alder County.", "Cover before sunset."),
						new CapAlert.Text("es-US", "Helada tardía", "Helada esta noche: cubra lo que florece",
								"QUÉ: −3 °C (27 °F) antes del amanecer.\nDÓNDE: Alder County.",
								"Cubra antes de la puesta del sol.")),
				"Basin extension", URI.create("https://garden.example/advisories/1"), "https://garden.example", null,
				List.of(new CapAlert.Place("Alder County", List.of(square(-91.86, 41.78, 0.4)))));
	}

	static Ring square(double west, double south, double size) {
		return new Ring(List.of(new Position(west, south), new Position(west + size, south),
				new Position(west + size, south + size), new Position(west, south + size), new Position(west, south)));
	}

	/** Anything that may be sent. */
	static CapAlert any(Random random) {
		CapAlert base = freeze();
		Instant sent = Instant.ofEpochSecond(1_700_000_000L + random.nextInt(100_000_000));
		MessageType type = MessageType.values()[random.nextInt(3)];
		Instant onset = sent.plusSeconds(random.nextInt(200_000) - 100_000L);
		List<CapAlert.Text> texts = new ArrayList<>();
		for (String language : List.of("en-US", "es-US").subList(0, 1 + random.nextInt(2))) {
			texts.add(new CapAlert.Text(language, "Event " + word(random), language + " " + word(random),
					word(random) + " " + word(random), word(random)));
		}
		List<CapAlert.Place> areas = new ArrayList<>();
		for (int i = 0; i <= random.nextInt(3); i++) {
			List<Ring> rings = new ArrayList<>();
			for (int k = random.nextInt(3); k >= 0; k--) {
				rings.add(square(random.nextDouble() * 300 - 150, random.nextDouble() * 150 - 75,
						0.01 + random.nextDouble()));
			}
			areas.add(new CapAlert.Place("Area " + word(random), rings));
		}
		EnumSet<Response> responses = EnumSet.noneOf(Response.class);
		responses.add(Response.values()[random.nextInt(Response.values().length)]);
		responses.add(Response.values()[random.nextInt(Response.values().length)]);
		return new CapAlert("urn:uuid:" + new UUID(random.nextLong(), random.nextLong()), base.sender(), sent,
				ZoneId.of(ZONES.get(random.nextInt(ZONES.size()))), CapAlert.Status.values()[random.nextInt(2)], type,
				base.source(), (type == MessageType.ALERT) ? "" : "a@b.example,urn:uuid:x,2026-01-01T00:00:00-06:00",
				base.incident(),
				new AlertFacts(pick(Category.values(), random), responses, pick(Urgency.values(), random),
						pick(Severity.values(), random), pick(Certainty.values(), random)),
				"Event", onset, (onset.isAfter(sent) ? onset : sent).plusSeconds(3600 + random.nextInt(1_000_000)),
				texts, "Sender " + word(random), base.web(), base.contact(),
				(type == MessageType.CANCEL) ? word(random) : null, areas);
	}

	private static <T> T pick(T[] values, Random random) {
		return values[random.nextInt(values.length)];
	}

	private static String word(Random random) {
		return WORDS.get(random.nextInt(WORDS.size()));
	}

}
