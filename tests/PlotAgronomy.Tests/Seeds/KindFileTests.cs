using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>What a kind's file may say, and that every slip in it is named with its file, line and field.</summary>
public class KindFileTests
{
    private static int NextLine => MyClover.Names.Length + 2;

    private static CropKind Read(string header, IEnumerable<string> rows) =>
        PublishedKinds.From(KindFile.Read(CsvTable.Parse(MyClover.File, string.Join('\n', rows.Prepend(header)))));

    private static CropKind With(params string[] more) => Read(MyClover.Header, MyClover.Names.Concat(more));

    private static void AssertProblem(int line, string field, Func<object> read)
    {
        var error = Assert.Throws<DataFormatException>(read);
        Assert.Equal((MyClover.File, line, field), (error.File, error.Line, error.Field));
    }

    [Fact]
    public void A_kind_may_have_names_alone()
    {
        var kind = With();
        Assert.Equal("my-clover", kind.Id);
        Assert.Equal("My clover", kind.CommonName);
        Assert.Equal(
            (FunctionalGroup.Legume, GrowingSeason.Cool, LifeCycle.Perennial),
            (kind.Group, kind.GrowingSeason, kind.LifeCycle)
        );
        Assert.True(kind is { SeedCount: null, Rates: null, Ph: null, Seasons: null, Hardiness: null, InoculantGroup: null });
        Assert.True(kind.OtherNames.IsEmpty && kind.Hazards.IsEmpty);
    }

    [Theory]
    [InlineData("order")]
    [InlineData("common-name")]
    [InlineData("short-name")]
    [InlineData("scientific-name")]
    [InlineData("family")]
    [InlineData("functional-group")]
    [InlineData("growing-season")]
    [InlineData("life-cycle")]
    [InlineData("chaffy")]
    public void A_kind_needs_its_names(string figure)
    {
        var rows = MyClover.Names.Where(r => !r.StartsWith(figure + ",", StringComparison.Ordinal)).ToList();
        Assert.Equal(MyClover.Names.Length - 1, rows.Count);
        AssertProblem(1, "figure", () => Read(MyClover.Header, rows));
    }

    [Theory]
    [InlineData("figure", "deph,,,,0.25,0.5,in,,PRACTICE,place,practice")]
    [InlineData("method", "full-rate,brodcast,,,3,8,lb-pls/ac,,PRACTICE,place,practice")]
    [InlineData("method", "depth,drilled,,,0.25,0.5,in,,PRACTICE,place,practice")]
    [InlineData("method", "other-name,trade,,,,,,mine,PRACTICE,place,practice")]
    [InlineData("method", "cold-limit,kils,,,10,15,f,dies,PRACTICE,place,practice")]
    [InlineData("method", "hazard,bloot,,,,,,high: livestock,PRACTICE,place,practice")]
    [InlineData("method", "season-of-use,autumn,,,,,,high,PRACTICE,place,practice")]
    public void A_misspelled_figure_or_method_is_named(string field, string row) =>
        AssertProblem(NextLine, field, () => With(row));

    [Theory]
    [InlineData("depth,,,,0.25,0.5,in,,PRACTICE,place,practice")]
    [InlineData("full-rate,drilled,,,3,8,lb-pls/ac,,PRACTICE,place,practice")]
    [InlineData("caution,,,,,,,Bloat,PRACTICE,place,practice")]
    [InlineData("cold-limit,overwinters,,,,,,lives,PRACTICE,place,practice")]
    public void A_figure_that_stands_once_may_not_stand_twice(string row)
    {
        Assert.Equal("my-clover", With(row).Id);
        AssertProblem(NextLine + 1, "figure", () => With(row, row));
    }

    [Theory]
    [InlineData("unit", "depth,,,,0.25,0.5,cm,,PRACTICE,place,practice")]
    [InlineData("unit", "depth,,,,0.25,0.5,,,PRACTICE,place,practice")]
    [InlineData("high", "depth,,,,0.5,0.25,in,,PRACTICE,place,practice")]
    [InlineData("high", "depth,,,,0.25,,in,,PRACTICE,place,practice")]
    [InlineData("low", "depth,,,,shallow,0.5,in,,PRACTICE,place,practice")]
    [InlineData("low", "emergence,,,,2.5,4,days,,PRACTICE,place,practice")]
    [InlineData("note", "depth,,,,0.25,0.5,in,shallow,PRACTICE,place,practice")]
    [InlineData("low", "caution,,,,3,,,Bloat,PRACTICE,place,practice")]
    [InlineData("note", "caution,,,,,,,,PRACTICE,place,practice")]
    [InlineData("unit", "cold-limit,overwinters,,,,,f,lives,PRACTICE,place,practice")]
    [InlineData("high", "cold-limit,overwinters,,,,9,,lives,PRACTICE,place,practice")]
    [InlineData("note", "hazard,bloat,,,,,,high,PRACTICE,place,practice")]
    [InlineData("note", "inoculant-group,,,,,,,clovers,PRACTICE,place,practice")]
    [InlineData("note", "tag-gives-dormant-seed,,,,,,,maybe,PRACTICE,place,practice")]
    [InlineData("purpose", "depth,,lawn,,0.25,0.5,in,,PRACTICE,place,practice")]
    [InlineData("region", "depth,,,south,0.25,0.5,in,,PRACTICE,place,practice")]
    [InlineData("source_id", "depth,,,,0.25,0.5,in,,,place,practice")]
    [InlineData("locator", "depth,,,,0.25,0.5,in,,PRACTICE,,read")]
    [InlineData("status", "depth,,,,0.25,0.5,in,,PRACTICE,place,believed")]
    [InlineData("method", "full-rate,mixture,,,1,3,lb-pls/ac,,PRACTICE,place,practice")]
    public void What_stands_in_a_cell_must_fit_its_figure(string field, string row) =>
        AssertProblem(NextLine, field, () => With(row));

    [Fact]
    public void Half_of_a_pair_of_figures_misses_the_other() =>
        AssertProblem(1, "figure", () => With("soil-ph,tolerated,,,5.5,7.5,ph,,PRACTICE,place,practice"));

    [Fact]
    public void A_column_that_nobody_reads_is_named()
    {
        AssertProblem(1, "colour", () => Read(MyClover.Header + ",colour", MyClover.Names.Select(r => r + ",red")));
        AssertProblem(2, "unit", () =>
            Read(
                MyClover.Header.Replace(",unit", "", StringComparison.Ordinal),
                MyClover.Names.Select(r => string.Join(',', r.Split(',').Where((_, i) => i != 6)))
            )
        );
    }

    [Fact]
    public void Figures_that_answer_together_are_known_as_well_as_the_least_known()
    {
        var rates = With(
            "full-rate,drilled,,,3,5,lb-pls/ac,,KIND-WVU,page 1,read",
            "full-rate,broadcast,,,3,8,lb-pls/ac,,KIND-EXT,page 2,memory"
        ).Rates!;
        Assert.Equal(DataStatus.Memory, rates.Evidence.Status);
        Assert.Equal(["KIND-EXT"], rates.Evidence.Sources.Select(s => s.Id));
        Assert.Equal(DataStatus.Read, rates.DrilledEvidence.Status);
        Assert.Equal(DataStatus.Memory, rates.InMixtureEvidence.Status);
    }

    private static PlantingWindow Window(string row) =>
        new(KindCatalog.Standard.Find("ladino-clover"), KindFile.Read(CsvTable.Parse(MyClover.File, $"{MyClover.Header}\n{row}")).PlantingWindows.Single());

    [Fact]
    public void A_planting_window_may_go_without_a_locator()
    {
        var window = Window("planting-window,late-winter,,north,02-15,03-20,month-day,window,KIND-EXT,,memory");
        Assert.Equal((PlantingRegion.North, PlantingSeason.LateWinter, "02-15 to 03-20"), (window.Region, window.Season, window.ToString()));
        Assert.Null(window.Note);
        Assert.Equal("late winter", window.Evidence.Locator);
    }

    [Theory]
    [InlineData("method", "planting-window,fal,,north,09-01,10-15,month-day,window,KIND-EXT,place,read")]
    [InlineData("region", "planting-window,fall,,west,09-01,10-15,month-day,window,KIND-EXT,place,read")]
    [InlineData("low", "planting-window,fall,,north,13-01,10-15,month-day,window,KIND-EXT,place,read")]
    [InlineData("high", "planting-window,fall,,north,09-01,10/15,month-day,window,KIND-EXT,place,read")]
    [InlineData("unit", "planting-window,fall,,north,09-01,10-15,days,window,KIND-EXT,place,read")]
    [InlineData("note", "planting-window,fall,,north,09-01,10-15,month-day,windows,KIND-EXT,place,read")]
    public void A_slip_in_a_planting_window_is_named(string field, string row) => AssertProblem(2, field, () => Window(row));

    [Fact]
    public void Every_file_is_a_kind_and_its_place_is_its_own()
    {
        var ids = Directory
            .EnumerateFiles(Repository.PathOf("src/PlotAgronomy/Seeds/Data/kinds"))
            .Select(Path.GetFileNameWithoutExtension);
        Assert.Equal(
            ids.Order(StringComparer.Ordinal),
            KindCatalog.Standard.Kinds.Select(k => k.Id).Order(StringComparer.Ordinal)
        );
        var kinds = KindCatalog.Standard.Kinds;
        Assert.Equal(["ladino-clover", "white-dutch-clover", "alsike-clover"], kinds.Take(3).Select(k => k.Id));
    }
}
