package exergue.typeset;

import exergue.finding.Finding;
import exergue.finding.Place;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.ext.beans.BeansWrapper;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.function.Consumer;

/**
 * The page templates, closed: they see plain lists, maps and words, cannot make or call anything of Java's, and can
 * include only their own neighbours.
 */
final class Templates {

    private final Configuration configuration;
    private final TemplateFiles files;
    private final Consumer<Finding> findings;

    Templates(TemplateFiles files, Consumer<Finding> findings) {
        this.files = files;
        this.findings = findings;
        this.configuration = closed();
        configuration.setTemplateLoader(new Loader(files));
    }

    private static Configuration closed() {
        Configuration closed = new Configuration(Configuration.VERSION_2_3_34);
        DefaultObjectWrapperBuilder plain = new DefaultObjectWrapperBuilder(Configuration.VERSION_2_3_34);
        plain.setExposureLevel(BeansWrapper.EXPOSE_NOTHING);
        closed.setObjectWrapper(plain.build());
        closed.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        closed.setAPIBuiltinEnabled(false);
        closed.setLocalizedLookup(false);
        closed.setDefaultEncoding(StandardCharsets.UTF_8.name());
        closed.setOutputFormat(HTMLOutputFormat.INSTANCE);
        closed.setLocale(Locale.ROOT);
        closed.setTimeZone(TimeZone.getTimeZone("UTC"));
        closed.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        closed.setLogTemplateExceptions(false);
        closed.setWrapUncheckedExceptions(true);
        closed.setNumberFormat("computer");
        return closed;
    }

    /** The page in XHTML, or nothing and a finding that says where in which template the fault is. */
    Optional<String> fill(String name, Map<String, Object> values) throws IOException {
        StringWriter page = new StringWriter();
        try {
            Template template = configuration.getTemplate(name);
            template.process(values, page);
            return Optional.of(page.toString());
        } catch (ParseException e) {
            report(place(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber()), e.getEditorMessage());
        } catch (TemplateException e) {
            report(place(e.getTemplateSourceName(), line(e.getLineNumber()), line(e.getColumnNumber())),
                    e.getMessageWithoutStackTop());
        } catch (TemplateNotFoundException e) {
            report(Place.ofFile(files.shown(name)), "There is no file “" + e.getTemplateName() + "” here.");
        }
        return Optional.empty();
    }

    private static int line(Integer known) {
        return known == null ? 0 : known;
    }

    private Place place(String name, int line, int column) {
        String file = files.shown(name == null ? "book.ftlh" : name);
        return line <= 0 ? Place.ofFile(file) : new Place(file, line, Math.max(column, 0), 0);
    }

    private void report(Place place, String why) {
        String first = why == null ? "" : why.strip().lines().findFirst().orElse("").strip();
        findings.accept(Finding.of(TypesetCodes.TEMPLATE_FAULT, place, "",
                "The page template cannot be filled here: " + first,
                "Mend the template, or take the file out of the catalogue's templates folder so that the "
                        + "program's own is used."));
    }

    private record Loader(TemplateFiles files) implements TemplateLoader {

        @Override
        public Object findTemplateSource(String name) throws IOException {
            return files.bytes(name).map(bytes -> new Source(name, new String(bytes, StandardCharsets.UTF_8)))
                    .orElse(null);
        }

        @Override
        public long getLastModified(Object source) {
            return 0;
        }

        @Override
        public Reader getReader(Object source, String encoding) {
            return new StringReader(((Source) source).text());
        }

        @Override
        public void closeTemplateSource(Object source) {
            // Held in memory: nothing to close.
        }
    }

    private record Source(String name, String text) { }
}
