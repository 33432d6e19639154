package evenfall.report.paper;

import java.io.IOException;
import java.util.List;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** What each part of a document is: a tree beside its pages (ISO 32000-1, 14.7). */
final class Tags {

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);

    Tags(PDDocument document) {
        root.appendKid(whole);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
    }

    /** A part of the document. */
    Tag add(String type) {
        return new Tag(whole, type);
    }

    /** Ties the pages' content to the tree; after the last page. */
    void finish(List<Sheet> sheets) {
        TreeMap<Integer, PDParentTreeValue> parents = new TreeMap<>();
        for (int i = 0; i < sheets.size(); i++) {
            parents.put(i, new PDParentTreeValue(sheets.get(i).tagged()));
        }
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(parents);
        root.setParentTree(tree);
        root.setParentTreeNextKey(sheets.size());
    }

    /** One part, or a part of a part. */
    static final class Tag {

        private final PDStructureElement element;
        private final String type;

        private Tag(PDStructureElement parent, String type) {
            this.type = type;
            element = new PDStructureElement(type, parent);
            parent.appendKid(element);
        }

        /** A part of this part. */
        Tag add(String kind) {
            return new Tag(element, kind);
        }

        /** Says what cannot be read. */
        Tag words(String words) {
            element.setAlternateDescription(words);
            return this;
        }

        /** Says of a head whether it heads a column or a row. */
        Tag heads(String scope) {
            COSDictionary table = new COSDictionary();
            table.setItem(COSName.O, COSName.getPDFName("Table"));
            table.setItem(COSName.getPDFName("Scope"), COSName.getPDFName(scope));
            element.getCOSObject().setItem(COSName.A, table);
            return this;
        }

        /** Prints some of its content; may be called again, on other sheets too. */
        void on(Sheet sheet, Sheet.Print print) throws IOException {
            PDMarkedContentReference reference = new PDMarkedContentReference();
            reference.setPage(sheet.page());
            reference.setMCID(sheet.tagged().size());
            sheet.content(type, print);
            sheet.tagged().add(element.getCOSObject());
            element.appendKid(reference);
        }
    }
}
