package org.leafward.register.core.list;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leafward.plants.NameLookup;

/** What a column holds, by the words above it in English or Spanish. */
enum Column {

	PLANT("plant", "plants", "plant name", "name", "names", "species", "common name", "crop", "kind", "planta",
			"plantas", "especie", "nombre", "nombre comun", "nombre de la planta", "cultivo"),

	BOTANICAL("botanical name", "scientific name", "latin name", "botanical", "latin", "taxon", "nombre botanico",
			"nombre cientifico", "nombre latino"),

	VARIETY("variety", "cultivar", "variedad"),

	COUNT("count", "number", "quantity", "qty", "no", "nr", "how many", "number of plants", "n", "cantidad", "numero",
			"cuantos", "cuantas", "unidades", "numero de plantas"),

	LABEL("label", "note", "notes", "what you call it", "called", "comment", "comments", "remark", "remarks",
			"description", "etiqueta", "nota", "notas", "comentario", "comentarios", "descripcion", "como se llama"),

	LOCATION("where", "location", "place", "position", "donde", "lugar", "ubicacion", "sitio", "zona"),

	BED("bed", "beds", "garden bed", "bed name", "arriate", "arriates", "bancal", "cama", "cantero"),

	PLANTED("planted", "planted on", "date", "date planted", "planting date", "year", "year planted", "when",
			"planted in", "plantado", "plantada", "plantado el", "plantacion", "fecha", "fecha de plantacion", "ano",
			"cuando"),

	PLACEMENT("placement", "roots", "where its roots are", "ground or container", "ground or pot", "ground container",
			"ground pot", "suelo o maceta"),

	IN_POT("pot", "container", "potted", "in a pot", "in a container", "maceta", "contenedor", "en maceta"),

	IN_GROUND("ground", "in the ground", "suelo", "tierra", "en el suelo"),

	AREA("area", "bed area", "square metres", "square meters", "square feet", "sq ft", "sqft", "m2", "sq m",
			"superficie", "metros cuadrados");

	private static final Map<String, Column> BY_WORD = byWord();

	private final List<String> words;

	Column(String... words) {
		this.words = List.of(words);
	}

	private static Map<String, Column> byWord() {
		Map<String, Column> all = new HashMap<>();
		for (Column column : values()) {
			column.words.forEach((word) -> all.put(word, column));
		}
		return Map.copyOf(all);
	}

	/**
	 * What a header means.
	 * @param header as it was written; what stands in brackets is left out
	 * @return empty when it isn't known
	 */
	static Optional<Column> of(String header) {
		if (header.strip().equals("#")) {
			return Optional.of(COUNT);
		}
		Column whole = BY_WORD.get(NameLookup.fold(header));
		return (whole != null) ? Optional.of(whole)
				: Optional.ofNullable(BY_WORD.get(NameLookup.fold(header.replaceAll("\\([^()]*\\)", " "))));
	}

	/** The unit of areas below a header, "" where it names none. */
	static String unit(String header) {
		String folded = NameLookup.fold(header);
		return folded.contains("ft") || folded.contains("feet") ? " sq ft" : "";
	}

}
