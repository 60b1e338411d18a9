package org.leafward.regions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.regions.core.Area;
import org.leafward.regions.core.Position;

/** Reads files of counties; JSON is YAML too, so each mistake has its line. */
final class RegionReader {

	private static final String SCHEMA = "schema/region-1.json";

	private static final String COMPLETE = "give each county region, zone and elevation-metres";

	private final KnowledgeReader reader;

	private final boolean inventedToo;

	private final Map<String, County> counties = new TreeMap<>();

	private final List<Town> towns = new ArrayList<>();

	private final List<Problem> problems = new ArrayList<>();

	/**
	 * Creates a reader.
	 * @param reader reads files of knowledge
	 * @param inventedToo whether files of invented places count
	 */
	RegionReader(KnowledgeReader reader, boolean inventedToo) {
		this.reader = reader;
		this.inventedToo = inventedToo;
	}

	/**
	 * Reads all files.
	 * @param files the files
	 * @return this, with counties and towns
	 * @throws BrokenKnowledge with every problem of every file
	 */
	RegionReader read(List<KnowledgeFile> files) {
		for (KnowledgeFile file : files) {
			Reading<RegionFile> reading = this.reader.read(file, SCHEMA, RegionFile.class);
			this.problems.addAll(reading.problems());
			RegionFile content = reading.value();
			if (content != null && (this.inventedToo || !Boolean.TRUE.equals(content.invented()))) {
				for (int i = 0; i < content.features().size(); i++) {
					read(reading, "/features/" + i, content.features().get(i));
				}
			}
		}
		if (!this.problems.isEmpty()) {
			throw new BrokenKnowledge(this.problems);
		}
		return this;
	}

	private void read(Reading<RegionFile> reading, String path, RegionFile.Feature feature) {
		String name = feature.properties().name().strip();
		RegionFile.Geometry shape = feature.geometry();
		if (shape.type().equals("Point")) {
			Position at = tried(reading, path + "/geometry/coordinates", name,
					() -> Shapes.position(shape.coordinates()));
			if (at != null) {
				this.towns.add(new Town(name, at));
			}
			return;
		}
		Area area = tried(reading, path + "/geometry/coordinates", name, () -> Shapes.area(shape));
		County county = tried(reading, path + "/properties", name, () -> {
			RegionFile.Properties known = feature.properties();
			return new County(Given.line("name", name), given(known.region()), Given.zone("zone", given(known.zone())),
					given(known.elevationMetres()), (area != null) ? area : Shapes.ANYWHERE);
		});
		if (county != null && this.counties.putIfAbsent(county.code(), county) != null) {
			this.problems.add(reading.places()
				.problem(path + "/properties/name", "'%s' is there twice".formatted(name),
						"put both shapes into one MultiPolygon, or name them apart"));
		}
	}

	private static <T> T given(@Nullable T value) {
		if (value == null) {
			throw new BadInput("the county lacks a property", "properties", COMPLETE);
		}
		return value;
	}

	private <T> @Nullable T tried(Reading<?> reading, String path, String name, Supplier<T> reads) {
		try {
			return Objects.requireNonNull(reads.get());
		}
		catch (BadInput ex) {
			this.problems.add(reading.places().problem(path, name + ": " + ex.what(), ex.mend()));
			return null;
		}
	}

	/**
	 * What was read.
	 * @return by name, then region
	 */
	List<County> counties() {
		return this.counties.values()
			.stream()
			.sorted(Comparator.comparing(County::name).thenComparing(County::region))
			.toList();
	}

	List<Town> towns() {
		return List.copyOf(this.towns);
	}

}
