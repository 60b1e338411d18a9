package org.leafward.pages.web;

import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.config.annotation.ViewControllerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Browsers ask for an icon at an address of their own where no page has told of one. Were
 * they sent to the sign-in, as for any unknown page, they would get a session for it,
 * which can come behind that of somebody who signs in meanwhile and take its place.
 */
@Component
class IconAddress implements WebMvcConfigurer {

	@Override
	public void addViewControllers(ViewControllerRegistry registry) {
		registry.addRedirectViewController("/favicon.ico", "/css/leaf.svg").setStatusCode(HttpStatus.MOVED_PERMANENTLY);
	}

}
