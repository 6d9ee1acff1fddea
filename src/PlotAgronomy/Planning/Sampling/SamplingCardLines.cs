using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>The sentences of the sampling card, from their table.</summary>
internal static class SamplingCardLines
{
    private static readonly Lazy<IReadOnlyDictionary<string, Row>> Rows = Table.Keyed(
        "Planning/Data/sampling-card.csv",
        r => r.Text("id"),
        r => new Row(r.Text("word"), new(r.Text("text")), r.Origin())
    );

    internal static IEnumerable<Source> Sources => Rows.Value.Values.SelectMany(r => r.Origin.Sources);

    /// <summary>From here on laboratories read no buffer.</summary>
    internal static double NoBufferFrom => SoilConstants.All["lime-not-expected-ph"];

    internal static int Months => (int)LimingConstants.All["full-effect"];

    internal static IEnumerable<(string Word, string Text)> Of(
        PlotPlan plan,
        SamplingAdvice advice,
        string? cropToName,
        bool needsBuffer,
        DateOnly? sendBy
    )
    {
        string depth = Amounts.Print(advice.Depth, "in", 0);
        yield return Line("when", ("when", When(sendBy)), ("months", Amounts.Print(Months, 0)));
        yield return Line("walk", ("cores", $"{advice.FewestCores} to {advice.MostCores}"), ("depth", depth));
        if (plan.IsUnworked)
        {
            yield return Line("shallow", ("depth", depth));
        }

        yield return Line("parts");
        yield return Line("mix");
        bool hasLegumes = plan.Kinds.Any(k => k.Kind.IsLegume);
        yield return Line("boxes", ("legume", hasLegumes ? Line("legume").Text : ""));
        yield return needsBuffer
            ? Line("buffer", ("reads", ReadsAt(plan)))
            : Line("no-buffer", ("ph", Amounts.Print(NoBufferFrom, 1)));
        string use = plan.Plot.IsCarriedOff ? "cut and carried off" : "browsed, never cut for hay";
        yield return Line("crop", ("crop", cropToName ?? "what you mean to grow"), ("use", use));
        yield return Line("ask");
        if (plan is { LimeOffers.IsEmpty: false } or { FertilizerOffers.IsEmpty: false } || !plan.Kinds.IsEmpty)
        {
            yield return Line("now-buy");
        }

        if (BySourness(plan) is [var (tolerant, lowest), .., var (sensitive, highest)] && highest > lowest)
        {
            yield return Line(
                "now-kinds",
                ("tolerant", tolerant),
                ("lowest", Amounts.Print(lowest, 1)),
                ("sensitive", sensitive),
                ("highest", Amounts.Print(highest, 1))
            );
        }

        yield return Line("now-plot");
    }

    private static (string Word, string Text) Line(string id, params ReadOnlySpan<(string, string)> values) =>
        (Rows.Value[id].Word, Rows.Value[id].Text.Filled(values));

    private static string When(DateOnly? sendBy) =>
        sendBy is { } day
            ? $"by {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, earlier if you can"
            : "half a year or more before you plant";

    /// <summary>What the lime methods of the place read.</summary>
    private static string ReadsAt(PlotPlan plan)
    {
        string[] read = plan.Plot.Place is { } place
            ? [.. Institution.Serving(place).SelectMany(i => i.LimeMethods).Select(m => m.Reads).Distinct()]
            : [];
        return read.Length == 0 ? "" : $" (the method of {plan.Plot.Place} reads {string.Join(" or ", read)})";
    }

    /// <summary>The kinds by the lowest pH they stand, those alike together.</summary>
    private static ImmutableArray<(string Kinds, double LowestPh)> BySourness(PlotPlan plan) =>
        [
            .. plan
                .Kinds.Select(k => new { k.Kind.ShortName, Lowest = k.Kind.LowestPhOn(plan.Soil) })
                .Where(k => k.Lowest is not null)
                .GroupAlike((one, other) => one.Lowest == other.Lowest)
                .OrderBy(alike => alike[0].Lowest!.Value)
                .Select(alike => (string.Join(", ", alike.Select(k => k.ShortName)), alike[0].Lowest!.Value)),
        ];

    private sealed record Row(string Word, TextWithPlaces Text, Origin Origin);
}
