package org.leafward.advisories.core.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.advisories.conditions.ConfiguredConditions;
import org.leafward.climate.Station;
import org.leafward.climate.core.RecordFixture;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;

/** Ten past seasons of real stations, to be read as a specialist would. */
class ReplayTests {

	private static final Station PARK = new Station(RecordFixture.CENTRAL_PARK, "New York Central Park",
			new GeoPoint(40.7789, -73.9692, 39.6), false);

	private static final Station TORONTO = new Station(RecordFixture.TORONTO, "Toronto",
			new GeoPoint(43.67, -79.40, 112), false);

	@Test
	void centralPark() throws IOException {
		List<Replay.Proposed> all = new Replay(PARK, RecordFixture.real(RecordFixture.CENTRAL_PARK), 2008, 2017)
			.run(ConfiguredConditions.all());
		write("central-park", all);
		assertThat(all).isNotEmpty();
	}

	@Test
	void toronto() throws IOException {
		List<Replay.Proposed> all = new Replay(TORONTO, RecordFixture.real(RecordFixture.TORONTO), 1993, 2002)
			.run(ConfiguredConditions.all());
		write("toronto", all);
		assertThat(all).isNotEmpty();
	}

	private static void write(String name, List<Replay.Proposed> all) throws IOException {
		Path folder = Files.createDirectories(Path.of("target", "advisories-replay"));
		StringBuilder list = new StringBuilder();
		all.forEach((one) -> list.append("%s %s | %s | %s%n".formatted(one.day(), one.condition().code(),
				Watch.days(one.hit()), String.join(" ", one.hit().reasons()))));
		Files.writeString(folder.resolve(name + ".txt"), list);
		StringBuilder table = new StringBuilder();
		Map<String, List<Replay.Proposed>> by = new TreeMap<>(
				all.stream().collect(Collectors.groupingBy((one) -> one.condition().code())));
		by.forEach((code, of) -> table.append("%-24s %3d  %s%n".formatted(code, of.size(),
				of.stream().map((one) -> one.day().toString().substring(2)).collect(Collectors.joining(" ")))));
		Files.writeString(folder.resolve(name + "-summary.txt"), table);
	}

}
