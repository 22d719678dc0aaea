package boughwright.api;

import boughwright.text.Language;
import boughwright.text.Text;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpHeaders;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Answers in the language that another program, or a phone, asks for: by {@code ?language=de}, else by {@code Accept-Language}, else in
 * English. Numbers, codes and names of fields are the same in all of them.
 */
@Configuration
class AskedLanguage implements WebMvcConfigurer, HandlerInterceptor {

    private static final String SPEAKING = AskedLanguage.class.getName();

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).addPathPatterns("/api/**", "/at-home/**");
    }

    /** The language that a request names; empty when it names none that is spoken here. */
    static Optional<Language> of(HttpServletRequest request) {
        return Language.read(request.getParameter("language")).or(() -> Language.liked(request.getHeader(HttpHeaders.ACCEPT_LANGUAGE)));
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        Language language = of(request).orElse(Language.ENGLISH);
        request.setAttribute(SPEAKING, Text.speak(language));
        response.setHeader(HttpHeaders.CONTENT_LANGUAGE, language.tag());
        response.addHeader(HttpHeaders.VARY, HttpHeaders.ACCEPT_LANGUAGE);
        return true;
    }

    @Override
    public void afterCompletion(HttpServletRequest request, HttpServletResponse response, Object handler, Exception broken) {
        if (request.getAttribute(SPEAKING) instanceof Text.Speaking speaking) {
            speaking.close();
        }
    }
}
