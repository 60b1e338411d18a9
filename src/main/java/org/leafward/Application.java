package org.leafward;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.modulith.Modulithic;

/**
 * Starts the Leafward server.
 */
@SpringBootApplication
@Modulithic(systemName = "Leafward", sharedModules = { "measure", "knowledge", "pages", "platform" })
public class Application {

	/**
	 * Starts the server.
	 * @param arguments Spring Boot command line arguments
	 */
	public static void main(String[] arguments) {
		SpringApplication.run(Application.class, arguments);
	}

}
