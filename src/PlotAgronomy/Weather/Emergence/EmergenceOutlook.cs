using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>When a kind sown on a date comes up: thermal time, counted on the days that the surface is moist where the seed
/// lies.</summary>
/// <remarks>By the thermal time to field emergence where one was seen in print for the kind, else by the days of its own file,
/// counted
/// on moist days above its least temperature. The temperature of the soil is an estimate from the air. Crust, disease and
/// depth are not
/// considered, depth only where the publication does.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class EmergenceOutlook : IWorkedResult
{
    private readonly ThermalTime? toSprout;
    private readonly ThermalTime? toEmerge;
    private readonly double depthMillimeters;
    private readonly ImmutableArray<EmergenceDay> days;

    private EmergenceOutlook(
        SeedbedOutlook seedbed,
        CropKind kind,
        DateOnly sown,
        SeedPlacement placement,
        double depthMillimeters,
        ThermalTime? toEmerge
    )
    {
        Kind = kind;
        Sown = sown;
        Placement = placement;
        this.depthMillimeters = depthMillimeters;
        this.toEmerge = toEmerge;
        toSprout = ThermalTime.Of(kind, ThermalStage.Germination);
        double limit = SeedbedOutlook.MoistLimit(placement);
        days =
        [
            .. seedbed
                .Days.Select(
                    (day, i) =>
                        new EmergenceDay(day.Date, SoilTemperature.Estimate(seedbed.Request.Days, i), day.Reduction >= limit)
                )
                .Where(day => day.Date >= sown),
        ];
        SproutsOn = toSprout is { } germination ? EmergenceClock.Reached(days, germination.OfDay, germination.DegreeDays) : null;
        EmergesOn = toEmerge is { } emergence
            ? EmergenceClock.Reached(days, emergence.OfDay, emergence.At(depthMillimeters))
            : EmergenceClock.Reached(days, WarmEnough, kind.Emergence!.To);
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the date of sowing.</summary>
    public DateOnly Sown { get; }

    /// <summary>Gets where the seed lies.</summary>
    public SeedPlacement Placement { get; }

    /// <summary>Gets the date on which half the seeds have sprouted; null where no thermal time is in print for it, or the
    /// days do not
    /// suffice.</summary>
    public DateOnly? SproutsOn { get; }

    /// <summary>Gets the date on which half the plants are up; null where the days do not suffice.</summary>
    public DateOnly? EmergesOn { get; }

    /// <summary>Gets a value indicating whether a thermal time to field emergence is in print for the kind; else its printed days
    /// are counted.</summary>
    public bool IsByThermalTime => toEmerge is not null;

    /// <summary>Gets the days among those known, from sowing to emergence or the last one, on which the surface is
    /// moist.</summary>
    public int MoistDays => UntilUp.Count(d => d.IsMoist);

    /// <summary>Gets the days that seed on the surface lies open to seed eaters; 0 for seed that is pressed in or
    /// covered.</summary>
    public int DaysExposed => Placement == SeedPlacement.OnSurface ? UntilUp.Count() : 0;

    /// <summary>Gets the dry days between the first wetting of the seed and its sprouting, or the last day where no date of
    /// sprouting is known.</summary>
    public int DryDaysBeforeSprouting =>
        UntilUp.SkipWhile(d => !d.IsMoist).Count(d => !d.IsMoist && (SproutsOn is null || d.Date <= SproutsOn));

    /// <summary>Gets the dry days between sprouting and emergence, or the last day: the root is out and does not stand
    /// them.</summary>
    public int DryDaysAfterSprouting => SproutsOn is { } sprouted ? UntilUp.Count(d => !d.IsMoist && d.Date > sprouted) : 0;

    /// <summary>Gets the mean temperature of the seed zone from sowing to emergence or the last day: an estimate.</summary>
    public Temperature SoilTemperatureEstimate => Temperature.FromDegreesCelsius(MeanCelsius);

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        EmergenceRemarks.Of(
            new(
                Kind,
                toEmerge,
                LeastCelsius,
                days.Count(d => d.SoilCelsius < LeastCelsius),
                DryDaysBeforeSprouting,
                DryDaysAfterSprouting,
                DaysExposed
            )
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. new[] { toSprout?.Origin, toEmerge?.Origin ?? Kind.Emergence?.Evidence }
                .OfType<Origin>()
                .SelectMany(o => o.Sources)
                .Distinct(),
        ];

    internal double MeanCelsius => UntilUp.Average(d => d.SoilCelsius);

    /// <summary>The estimate for the day of sowing.</summary>
    internal double SownCelsius => days[0].SoilCelsius;

    internal double? LeastCelsius => Kind.Germination?.Minimum is { DegreesCelsius: var least } ? least : null;

    private IEnumerable<EmergenceDay> UntilUp => days.Where(d => EmergesOn is null || d.Date <= EmergesOn);

    /// <summary>Works out when a kind comes up.</summary>
    /// <param name="seedbed">The seedbed and its weather.</param>
    /// <param name="kind">Kind.</param>
    /// <param name="sown">Date of sowing, among the days of the seedbed.</param>
    /// <param name="placement">Where the seed lies.</param>
    /// <param name="depth">Depth of covered seed; the kind's shallowest where it is left out.</param>
    /// <param name="thermalTimeId">A thermal time asked for by name, such as one that was not yet seen in its
    /// publication.</param>
    /// <returns>The outlook; open for a kind without thermal time and printed days.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date outside the days, an unknown placement, a negative depth.</exception>
    /// <exception cref="KeyNotFoundException">No thermal time has this name; the message lists all.</exception>
    public static Answer<EmergenceOutlook> Of(
        SeedbedOutlook seedbed,
        CropKind kind,
        DateOnly sown,
        SeedPlacement placement,
        Length? depth = null,
        string? thermalTimeId = null
    )
    {
        ArgumentNullException.ThrowIfNull(seedbed);
        ArgumentNullException.ThrowIfNull(kind);
        Guard.Defined(placement);
        if (sown < seedbed.Days[0].Date || sown > seedbed.Days[^1].Date)
        {
            throw new ArgumentOutOfRangeException(nameof(sown), sown, "Must be one of the days of the seedbed.");
        }

        double given = depth is { Millimeters: var known } ? Guard.Between(known, 0, 500, "mm", nameof(depth)) : DepthOf(kind);
        double millimeters = placement == SeedPlacement.Covered ? given : 0;
        var toEmerge = thermalTimeId is null ? ThermalTime.Of(kind, ThermalStage.Emergence) : ThermalTime.Find(thermalTimeId);
        if (toEmerge is null && kind.Emergence is null)
        {
            return Answers.Open<EmergenceOutlook>(() => [WeatherQuestions.Emergence(kind)]);
        }

        var outlook = new EmergenceOutlook(seedbed, kind, sown, placement, millimeters, toEmerge);
        return Answers.Given(outlook, () => outlook.Findings);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        EmergenceWork.Lines(toEmerge, depthMillimeters, MeanCelsius, [.. UntilUp.Where(d => d.IsMoist)]);

    private static double DepthOf(CropKind kind) => kind.Depth?.Shallowest is { Millimeters: var shallowest } ? shallowest : 0;

    private double WarmEnough(double celsius) => LeastCelsius is { } least && celsius < least ? 0 : 1;

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
