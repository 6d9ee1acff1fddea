using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>What the pH did after liming, against what the rate promised for the lime that was put down and the months it
/// had.</summary>
/// <remarks>Both readings are of one laboratory. Acid from nitrogen since is not considered.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PhResponse : IWorkedResult
{
    private readonly LimeRate rate;
    private readonly double lowAtWork;
    private readonly double highAtWork;

    private PhResponse(string plot, LimeRate rate, TrendPoint before, TrendPoint after, double lowAtWork, double highAtWork)
    {
        Plot = plot;
        this.rate = rate;
        Before = before;
        After = after;
        this.lowAtWork = lowAtWork;
        this.highAtWork = highAtWork;
    }

    /// <summary>Gets the name of the plot.</summary>
    public string Plot { get; }

    /// <summary>Gets the last pH before the lime.</summary>
    public TrendPoint Before { get; }

    /// <summary>Gets the last pH after it.</summary>
    public TrendPoint After { get; }

    /// <summary>Gets the least pH that was promised, noise of both readings taken off.</summary>
    public double PromisedLow => RecordMath.PromisedPh(Before.Value, rate.TargetPh, lowAtWork, -Noise);

    /// <summary>Gets the greatest pH that was promised, noise of both readings added.</summary>
    public double PromisedHigh => RecordMath.PromisedPh(Before.Value, rate.TargetPh, highAtWork, Noise);

    /// <summary>Gets a value indicating whether the pH rose as promised, within the noise.</summary>
    public bool IsAsPromised => After.Value >= PromisedLow && After.Value <= PromisedHigh;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        IsAsPromised
            ? []
            :
            [
                FindingCatalog.Create(
                    After.Value < PromisedLow ? RecordCodes.PhBelowPromise : RecordCodes.PhAbovePromise,
                    ("plot", Plot),
                    ("before", Print(Before.Value)),
                    ("after", Print(After.Value)),
                    ("low", Print(PromisedLow)),
                    ("high", Print(PromisedHigh))
                ),
            ];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. rate
                .Basis.Origin.Sources.Concat(LimeReaction.Sources)
                .Concat(RecordConstants.All.Find("noise-ph").Origin.Sources)
                .Distinct(),
        ];

    private static double Noise => ReadingTrend.LeastReal("noise-ph");

    /// <summary>Holds the pH of a plot against what its lime promised.</summary>
    /// <param name="book">Book.</param>
    /// <param name="plot">Name of the plot, as the book has it.</param>
    /// <param name="area">Area of the plot.</param>
    /// <param name="on">Date; what was entered for later days is not counted.</param>
    /// <returns>The response; open where the rate, a lime's strength or a pH before or after is not in the book; not needed where
    /// no lime was spread.</returns>
    /// <exception cref="ArgumentException">A blank name, or an area that is not above 0.</exception>
    public static Answer<PhResponse> Of(PlotBook book, string plot, Area area, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(book);
        Guard.NotBlank(plot);
        Guard.Positive(area);
        if (book.Of<NeedEntry>(plot).LastOrDefault(n => n.Lime is not null && n.On <= on) is not { Lime: { } rate } need)
        {
            return Answers.Open<PhResponse>(() => [RecordQuestions.LimeNeed(plot)]);
        }

        ImmutableArray<LimeEntry> limed =
        [
            .. book.Of<LimeEntry>(plot).Where(l => l.On >= need.On && l.On <= on && l.Material.Neutralizes),
        ];
        if (limed.IsEmpty || rate.IsNone)
        {
            return Answers.NoneNeeded<PhResponse>();
        }

        if (limed.FirstOrDefault(l => rate.WhyNotCounted(l.Material) is not null) is { } unknown)
        {
            return Answers.Open<PhResponse>(() => [RecordQuestions.LimeStrength(unknown.Material, rate.Basis)]);
        }

        var readings = book.Of<SoilReportEntry>(plot)
            .Where(e => e.On <= on && e.Report.WaterPh is not null)
            .Select(e => (e.On, Ph: e.Report.WaterPh!.Value, Laboratory: Institution.FindLaboratory(e.Report.Laboratory)))
            .ToList();
        var first = limed[0].On;
        if (readings.LastOrDefault(r => r.On <= first) is not { Laboratory: { } laboratory } before)
        {
            return Answers.Open<PhResponse>(() => [RecordQuestions.PhBefore(plot, first)]);
        }

        if (readings.LastOrDefault(r => r.On > limed[^1].On && r.Laboratory == laboratory) is not { Laboratory: not null } after)
        {
            return Answers.Open<PhResponse>(() => [RecordQuestions.PhAfter(plot, laboratory.Name, limed[^1].On)]);
        }

        return Answers.Given(
            Made(plot, rate, area.Acres, limed, TrendPoint.At(before.On, before.Ph), TrendPoint.At(after.On, after.Ph))
        );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [Line("least", lowAtWork, -Noise, PromisedLow), Line("most", highAtWork, Noise, PromisedHigh)];

    /// <inheritdoc/>
    public override string ToString() => this.InWords();

    private static PhResponse Made(
        string plot,
        LimeRate rate,
        double acres,
        ImmutableArray<LimeEntry> limed,
        TrendPoint before,
        TrendPoint after
    )
    {
        double low = 0;
        double high = 0;
        foreach (var lime in limed)
        {
            var worked = LimeReaction.After(lime.Material, LimeAtWork.Months(lime.On, after.On));
            double pounds = LimeApplication.FromMass(lime.Weight, lime.Material).PoundsOfBasis(rate);
            double share = RecordMath.PutDown(pounds, acres) / rate.OfBasis.PoundsPerAcre;
            low += share * worked.Low.Value;
            high += share * worked.High.Value;
        }

        return new(plot, rate, before, after, low, high);
    }

    private static string Print(double ph) => Amounts.Print(ph, 2);

    private WorkedLine Line(string end, double atWork, double margin, double promised) =>
        RecordFormulas
            .All["record-ph-promised"]
            .Line(
                Print(promised),
                ("end", end),
                ("pH", Print(Before.Value)),
                ("target", Print(rate.TargetPh)),
                ("share at work", Amounts.Print(atWork, 3)),
                ("noise", Print(margin))
            );
}
