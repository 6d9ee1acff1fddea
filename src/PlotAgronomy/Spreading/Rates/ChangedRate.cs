using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>The rate that lands when pace or pass spacing is not the one the gate was set for.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class ChangedRate : IWorkedResult
{
    internal ChangedRate() { }

    /// <summary>Gets the rate the gate was set for.</summary>
    public required ApplicationRate Intended { get; init; }

    /// <summary>Gets the rate that really lands.</summary>
    public required ApplicationRate Actual { get; init; }

    /// <summary>Gets the change in percent; positive is more than intended.</summary>
    public double ChangePercent => (Actual / Intended - 1) * 100;

    /// <summary>Gets the part of the plot that the seed weighed for it will cover; 1 when it covers all.</summary>
    public double CoveredShare => Math.Min(1, Intended / Actual);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            .. IsOfSpacing ? SwathDiffers() : PaceDiffers(),
            .. IsOfSpacing
                ? SpreadingPlausibility.Of(swath: Length.FromFeet(Kept), rate: Intended)
                : SpreadingPlausibility.Of(pace: Speed.FromMilesPerHour(Kept), rate: Intended),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => SpreadingFormulas.UnitSources;

    /// <summary>Whether the spacing of the passes is what changed; else the pace.</summary>
    internal bool IsOfSpacing { get; init; }

    /// <summary>Feet or mph the gate was set for.</summary>
    internal double Planned { get; init; }

    /// <summary>Feet or mph really kept.</summary>
    internal double Kept { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All[IsOfSpacing ? "spread-rate-at-spacing" : "spread-rate-at-speed"]
                .Line(
                    $"{Amounts.Print(Actual.PoundsPerAcre, 3)} lb/ac",
                    ("rate", Amounts.Print(Intended.PoundsPerAcre, 3)),
                    (IsOfSpacing ? "swath of the calibration" : "planned speed", Amounts.Print(Planned, 3)),
                    (IsOfSpacing ? "spacing of the passes" : "speed kept", Amounts.Print(Kept, 3))
                ),
        ];

    private ImmutableArray<Finding> SwathDiffers() =>
        Tolerance.AreEqual(Planned, Kept)
            ? []
            :
            [
                FindingCatalog.Create(
                    SpreadingCodes.SwathDiffers,
                    ("calibrated", Amounts.Print(Planned, 2)),
                    ("walked", Amounts.Print(Kept, 2)),
                    ("change", Amounts.Print(ChangePercent, 1))
                ),
            ];

    private ImmutableArray<Finding> PaceDiffers() =>
        Tolerance.IsAbove(Math.Abs(ChangePercent), SpreadingConstants.All["target-tolerance"])
            ?
            [
                FindingCatalog.Create(
                    SpreadingCodes.PaceDiffers,
                    ("planned", Amounts.Print(Planned, 2)),
                    ("kept", Amounts.Print(Kept, 2)),
                    ("change", Amounts.Print(ChangePercent, 1))
                ),
            ]
            : [];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
