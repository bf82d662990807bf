package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a buyer wants written: read, dealt out, checked, and asked about where only the buyer knows. */
final class PersonalisationTest {
    private static final String ORDERS = "Order,SKU,Design,Qty,Personalisation";

    @TempDir
    private Path folder;

    private Stall stall = new Stall(Path.of(""));

    @BeforeEach
    void open() throws IOException {
        stall = new Stall(folder);
        stall.table(
                "texts.csv",
                "design,field,max_chars,required,default",
                "lamp,name,12,yes,",
                "lamp,date,,,no date",
                "tern,message,20,,",
                "choir,year,,,");
        stall.table(
                "designs.csv",
                "design,artwork",
                "lamp,storm-lamp.png",
                "tern,tern.jpg",
                "choir,choir.png",
                "plain,tern.jpg");
        stall.table("sites.csv", "site,empty_words,text_separator", ",none|N/A,\",\"");
        stall.table(
                "order-columns.csv",
                "site,field,header",
                ",order,Order",
                ",sku,SKU",
                ",design,Design",
                ",product,Product",
                ",quantity,Qty",
                ",personalisation,Personalisation",
                ",text:name,Keeper",
                ",text:date,Day of the storm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lamp | Name: Ada                                      | date=no date name=Ada",
                "lamp | name : Ada; DATE: 3 May                        | date=3 May name=Ada",
                "lamp | Name: Ada<br>Date: 3 May                       | date=3 May name=Ada",
                "lamp | 'Date: 3 May, Name: Ada'                       | date=3 May name=Ada",
                "lamp | Name: Ada Date: 3 May                          | date=3 May name=Ada",
                "lamp | 'Keeper: Ada, day of the  storm: 3 May'        | date=3 May name=Ada",
                "lamp | Text: Name: Ada                                | date=no date name=Ada",
                "lamp | Name: Zo&euml; &amp;amp; Bo                    | date=no date name=Zoë &amp; Bo",
                "lamp | Name: O&#39;Neil &#x1F425;                     | date=no date name=O'Neil \uD83D\uDC25",
                "lamp | 'Name: Ada, Date: none'                        | date=no date name=Ada",
                "tern | Gale force 9                                   | message=Gale force 9",
                "tern | Meet me at: 5 pm                               | message=Meet me at: 5 pm",
                "tern | Personalisation: Gale &amp; calm               | message=Gale & calm",
                "tern | my surname: Bo                                 | message=my surname: Bo",
            })
    void aPackedCellIsSplitBeforeKnownLabelsOnly(String design, String cell, String texts) throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,MUG-11-W," + design + ",1,\"" + cell + '"');
        Run run = stall.run();
        assertThat(Stall.texts(run)).containsExactly("Q1-1 " + texts);
        boolean hasBird = texts.contains("\uD83D\uDC25"); // a picture that no bundled font has
        assertThat(Stall.story(run))
                .containsExactly(hasBird ? "held Q1 x1 glyph-missing" : "made Q1-1-1 MUG-11-W " + design);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lamp  | Ada                             | Ada",
                "lamp  | To my love Name: Ada            | To my love",
                "lamp  | 'Name: Ada, Year: 1912'         | Year: 1912",
                "lamp  | Name: Ada; Font: curly          | Font: curly",
                "tern  | Year: 1912                      | Year: 1912",
                "plain | For Ada                         | For Ada",
            })
    void whatIsNotUnderstoodIsHeldAndNeverDropped(String design, String cell, String left) throws Exception {
        stall.orders("fair.csv", ORDERS, "Q7,MUG-11-W," + design + ",1,\"" + cell + '"');
        HeldRow held = stall.held();
        assertThat(held.reason().code()).isEqualTo("personalisation-unread");
        assertThat(held.reason().message()).startsWith('"' + left + '"');
        assertThat(held.column()).isEqualTo("Personalisation");
        assertThat(held.ask().orElseThrow()).contains("Q7", cell);
    }

    @Test
    void aTextColumnThatTheDesignHasNoPlaceForIsHeldToo() throws Exception {
        stall.orders("fair.csv", "Order,SKU,Design,Text: Name", "Q1,MUG-11-W,plain,Ada", "Q2,MUG-11-W,plain,N/A");
        Run run = stall.run();
        assertThat(Stall.story(run)).containsExactly("made Q2-1-1 MUG-11-W plain", "held Q1 x1 personalisation-unread");
        assertThat(run.held().get(0).column()).isEqualTo("Text: Name");
    }

    @Test
    void whatNeedsNoTextIsMade() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,MUG-11-W,plain,1,none", "Q2,MUG-11-W,tern,1,", "Q3,MUG-11-W,tern,1,n/a");
        assertThat(stall.story())
                .containsExactly(
                        "made Q1-1-1 MUG-11-W plain", "made Q2-1-1 MUG-11-W tern", "made Q3-1-1 MUG-11-W tern");
    }

    @Test
    void oneTextIsForAllAndAsManyAsPiecesGoOneToEach() throws Exception {
        stall.orders(
                "fair.csv",
                ORDERS,
                "Q1,MUG-11-W,lamp,3,Name: Ada",
                "Q2,MUG-11-W,lamp,3,\"Name: Ada, Ben, Cleo\"",
                "Q3,MUG-11-W,lamp,2,\"Name: Ada\nName: Ben\nDate: 3 May\"");
        assertThat(Stall.texts(stall.run()))
                .containsExactly(
                        "Q1-1 date=no date name=Ada",
                        "Q1-2 date=no date name=Ada",
                        "Q1-3 date=no date name=Ada",
                        "Q2-1 date=no date name=Ada",
                        "Q2-2 date=no date name=Ben",
                        "Q2-3 date=no date name=Cleo",
                        "Q3-1 date=3 May name=Ada",
                        "Q3-2 date=3 May name=Ben");
    }

    @Test
    void anotherNumberOfTextsIsAskedAbout() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q2,MUG-11-W,lamp,3,\"Name: Ada, Ben\"");
        HeldRow held = stall.held();
        assertThat(held.reason().code()).isEqualTo("texts-not-dealt");
        assertThat(held.pieces()).isEqualTo(3);
        assertThat(held.reason().message()).contains("2 texts", "3 pieces");
        assertThat(held.ask().orElseThrow()).contains("Q2", "\"Name: Ada, Ben\"", "3 pieces");
    }

    @Test
    void textsOfASetGoToThePiecesThatTakeThem() throws Exception {
        stall.table(
                "products.csv",
                "site,product,variation,blank,design,count,texts",
                ",Keepers' pair,,MUG-11-W,lamp,,",
                ",Keepers' pair,,MUG-11-W,plain,,",
                ",Keepers' pair,,MUG-11-W,tern,,message=Keep the light");
        stall.orders("fair.csv", "Order,Product,Qty,Personalisation", "Q1,Keepers' pair,2,\"Name: Ada, Ben\"");
        assertThat(Stall.texts(stall.run()))
                .containsExactlyInAnyOrder(
                        "Q1-1 date=no date name=Ada",
                        "Q1-2",
                        "Q1-3 message=Keep the light",
                        "Q1-4 date=no date name=Ben",
                        "Q1-5",
                        "Q1-6 message=Keep the light");
        assertThat(stall.story())
                .containsExactly(
                        "made Q1-1-1 MUG-11-W lamp",
                        "made Q1-1-4 MUG-11-W lamp",
                        "made Q1-1-2 MUG-11-W plain",
                        "made Q1-1-5 MUG-11-W plain",
                        "made Q1-1-3 MUG-11-W tern",
                        "made Q1-1-6 MUG-11-W tern");
    }

    @Test
    void aMissingTextIsAskedForByItsName() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,MUG-11-W,lamp,1,Date: 3 May");
        HeldRow held = stall.held();
        assertThat(held.reason().code()).isEqualTo("text-missing");
        assertThat(held.reason().message()).contains("lamp", "name");
        assertThat(held.ask())
                .contains("About your order Q1: you wrote \"Date: 3 May\". What should we print as \"name\"?");
    }

    @Test
    void aTextThatIsTooLongSaysHowMuchRoomThereIs() throws Exception {
        stall.orders(
                "fair.csv",
                ORDERS,
                "Q1,MUG-11-W,lamp,1,Name: Bartholomew Oke",
                "Q2,MUG-11-W,lamp,1,Name: Bartholomew\u0301a");
        Run run = stall.run();
        assertThat(Stall.story(run)).containsExactly("made Q2-1-1 MUG-11-W lamp", "held Q1 x1 text-too-long");
        assertThat(run.held().get(0).reason().message()).contains("15 characters", "12");
    }

    @Test
    void whatElseIsWrongIsSaidBeforeTheTexts() throws Exception {
        stall.orders("fair.csv", ORDERS, "Q1,MUG-11-W,lampp,1,Ada", "Q2,MUGG,lamp,1,Ada");
        assertThat(stall.story()).containsExactly("held Q1 x1 design-unknown", "held Q2 x1 blank-unknown");
    }

    @Test
    void whatIsMadeForTheShelfHasNobodyToAsk() throws Exception {
        stall.orders("fair.csv", ORDERS, "STOCK,MUG-11-W,lamp,1,");
        assertThat(stall.held().ask()).isEmpty();
    }

    @Test
    void aFormulaThatFailedIsNobodysName() throws Exception {
        stall.orders(
                "fair.csv",
                ORDERS + ",Keeper",
                "Q1,MUG-11-W,lamp,1,Name: #N/A,",
                "Q2,MUG-11-W,lamp,1,,#REF!",
                "Q3,MUG-11-W,tern,1,#VALUE!,");
        assertThat(stall.story())
                .containsExactly(
                        "held Q1 x1 personalisation-unread",
                        "held Q2 x1 personalisation-unread",
                        "held Q3 x1 personalisation-unread");
    }

    @Test
    void aCellThatContradictsItsColumnIsHeld() throws Exception {
        stall.orders(
                "fair.csv", ORDERS + ",Keeper", "Q1,MUG-11-W,lamp,1,Name: Ada,Ada", "Q2,MUG-11-W,lamp,1,Name: Ada,Ben");
        assertThat(stall.story()).containsExactly("made Q1-1-1 MUG-11-W lamp", "held Q2 x1 personalisation-unread");
    }
}
