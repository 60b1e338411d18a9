package org.leafward.pages;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.leafward.Application;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.DemoVisitor;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;

/**
 * How long the pages of a gardener with many plantings take, in the demo, one request
 * after the other; in English and in Spanish.
 */
public final class GardenerPagesBenchmark {

	private GardenerPagesBenchmark() {
	}

	/**
	 * Prints milliseconds and octets of each page.
	 * @param args number of plantings, 200 by default; how often each page is asked for,
	 * 200 by default, after a third of it to warm up
	 */
	public static void main(String[] args) throws Exception {
		int plantings = (args.length > 0) ? Integer.parseInt(args[0]) : 200;
		int rounds = (args.length > 1) ? Integer.parseInt(args[1]) : 200;
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-pages")
			.toAbsolutePath();
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).profiles("demo")
			.run("--leafward.data-directory=" + folder, "--server.port=0", "--logging.level.root=error")) {
			int port = Integer.parseInt(context.getEnvironment().getRequiredProperty("local.server.port"));
			Site site = garden(context, plantings);
			for (String languages : List.of("en", "es")) {
				DemoVisitor visitor = new DemoVisitor(port, languages);
				visitor.become("Bram Ostrand");
				String home = "/sites/" + site.id();
				String task = visitor.page(home).selectFirst("a[href^=/tasks/]").attr("href");
				for (String path : List.of("/", "/sites", home, task, home + "/weather", home + "/freezes", home + "/log",
						home + "/review", home + "/plantings/new", "/subscribe", "/reminders", "/cases")) {
					measure(visitor, languages, path, rounds);
				}
			}
		}
		finally {
			FileSystemUtils.deleteRecursively(folder);
		}
	}

	private static Site garden(ConfigurableApplicationContext context, int plantings) {
		Person owner = context.getBean(People.class)
			.list(0, 50)
			.stream()
			.filter((person) -> person.name().equals("Bram Ostrand"))
			.findFirst()
			.orElseThrow();
		List<Species> species = context.getBean(Catalogue.class).all();
		Register register = context.getBean(Register.class);
		Site site = register.addSite(owner.id(), new NewSite("Bench garden", "Alder County",
				new GeoPoint(42.1, -91.6, 220), ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN,
				Wind.AVERAGE));
		List<NewPlanting> all = new ArrayList<>();
		for (int i = 0; i < plantings; i++) {
			Species one = species.get(i * species.size() / plantings);
			all.add(new NewPlanting(one.id(), one.commonName() + " " + i, 1 + i % 5, LocalDate.of(2019, 5, 1),
					Placement.GROUND, false, false));
		}
		register.addPlantings(site.id(), all);
		return site;
	}

	private static void measure(DemoVisitor visitor, String languages, String path, int rounds) throws Exception {
		long[] nanos = new long[rounds];
		for (int i = -rounds / 3; i < rounds; i++) {
			long begin = System.nanoTime();
			visitor.answer(path, "gzip");
			if (i >= 0) {
				nanos[i] = System.nanoTime() - begin;
			}
		}
		Arrays.sort(nanos);
		System.out.printf("PAGES %s %-60s median %.1f ms, of twenty the slowest %.1f ms, slowest %.1f ms, %,d octets%n",
				languages, path.replaceAll("[0-9a-f-]{36}", "…"), nanos[rounds / 2] / 1e6, nanos[rounds * 19 / 20] / 1e6,
				nanos[rounds - 1] / 1e6, visitor.answer(path, "gzip").body().length);
	}

}
