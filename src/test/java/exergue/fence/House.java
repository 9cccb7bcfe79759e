package exergue.fence;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The program's own classes, read once. */
final class House {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("exergue");

    private House() { }

    static JavaClasses classes() {
        return CLASSES;
    }

    /** {@code measure} for everything in and below {@code exergue.measure}; {@code exergue} for the root package. */
    static String room(String packageName) {
        String[] steps = packageName.split("\\.");
        return steps.length > 1 ? steps[1] : steps[0];
    }
}
