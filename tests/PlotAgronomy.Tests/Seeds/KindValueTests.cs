using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>The list of values that a second reading of the publications asked for (docs/kind-values.csv) says of each what stands
/// now, and of each that was not taken why.</summary>
public class KindValueTests
{
    private static readonly Lazy<CsvTable> Table = new(() =>
        CsvTable.Parse("docs/kind-values.csv", File.ReadAllText(Repository.PathOf("docs/kind-values.csv"))));

    public static TheoryData<int> Lines => [.. Enumerable.Range(0, Table.Value.Rows.Length)];

    [Fact]
    public void Every_value_asked_for_is_listed() => Assert.Equal(149, Table.Value.Rows.Length);

    [Theory, MemberData(nameof(Lines))]
    public void What_stands_now_is_what_the_kind_holds(int line)
    {
        var row = Table.Value.Rows[line];
        var (low, high) = Of(KindCatalog.Standard.Find(row.Text("kind")), row.Text("figure"));
        Assert.Equal(row.Text("now"), low == high ? Print(low) : $"{Print(low)}-{Print(high)}");
        Assert.Equal(row.Text("now") == row.Text("asked_for"), row.Text("taken") == "yes");
        Assert.Equal(row.Text("taken") == "yes", row.TextOrNull("why") is null);
        Assert.All(row.List("sources"), id => Assert.Equal(id, Source.Find(id).Id));
    }

    private static (double Low, double High) Of(CropKind kind, string figure) =>
        figure switch
        {
            "rate-broadcast" => Rate(kind.Rates!.Broadcast!),
            "rate-drilled" => Rate(kind.Rates!.Drilled!),
            "rate-mixture" => Rate(kind.Rates!.InMixture!),
            "depth" => (kind.Depth!.Shallowest.Inches, kind.Depth.Deepest.Inches),
            "emergence" => (kind.Emergence!.From, kind.Emergence.To),
            "usable-days" => (kind.UsableForage!.From, kind.UsableForage.To),
            "seeds-per-lb" => (kind.SeedCount!.SeedsPerPound, kind.SeedCount.SeedsPerPound),
            "ph-minimum" => (kind.Ph!.MinimumPh, kind.Ph.MinimumPh),
            "ph-best" => (kind.Ph!.BestPhFrom, kind.Ph.BestPhTo),
            "cold-limit" => (kind.Hardiness!.LimitFrom!.Value.DegreesFahrenheit, kind.Hardiness.LimitTo!.Value.DegreesFahrenheit),
            _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "no figure of a kind"),
        };

    private static (double Low, double High) Rate(PureLiveSeedRateRange range) => (range.Low.PoundsPerAcre, range.High.PoundsPerAcre);

    private static string Print(double number) => Math.Round(number, 3, MidpointRounding.ToEven).ToString("0.###", CultureInfo.InvariantCulture);
}
