using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>The rain that a forecast tells for a window of time.</summary>
/// <remarks>The chance of any rain lies between that of the strongest period and the sum of all, whatever the weather; the
/// chance by
/// independent periods lies between, and is too high where rain persists. A period that the window cuts keeps its
/// chance.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RainOutlook : IWorkedResult
{
    private readonly WeatherForecast forecast;
    private readonly ImmutableArray<RainBlock> blocks;

    internal RainOutlook(WeatherForecast forecast, TimeSlot window)
    {
        this.forecast = forecast;
        Window = window;
        blocks = [.. forecast.Blocks.Where(b => b.Slot.HoursShared(window) > 0)];
        (Millimeters, HoursOfAmount) = forecast.AmountIn(window);
        var chances = Chances.ToList();
        ChanceOfAny = Fraction.FromValue(chances.Aggregate(0.0, RainMath.IndependentPeriods));
        ChanceAtLeast = Fraction.FromValue(chances.Aggregate(0.0, RainMath.StrongestPeriod));
        ChanceAtMost = Fraction.FromValue(chances.Aggregate(0.0, RainMath.SumOfPeriods));
    }

    /// <summary>Gets the start of the window.</summary>
    public DateTimeOffset From => Window.Start;

    /// <summary>Gets the end of the window.</summary>
    public DateTimeOffset To => Window.End;

    /// <summary>Gets the amount expected, over all outcomes; of the hours that an amount is told for.</summary>
    public Length Amount => Length.FromMillimeters(Millimeters);

    /// <summary>Gets the part of the window that an amount is told for.</summary>
    public Fraction PartTold => Fraction.FromValue(Math.Min(1, HoursOfAmount / Window.Hours));

    /// <summary>Gets the least that the chance of any rain can be: that of the strongest period.</summary>
    public Fraction ChanceAtLeast { get; }

    /// <summary>Gets the chance of any rain if the periods were independent of each other.</summary>
    public Fraction ChanceOfAny { get; }

    /// <summary>Gets the most that the chance of any rain can be: the sum of the periods, at most certain.</summary>
    public Fraction ChanceAtMost { get; }

    /// <summary>Gets the intensity of the heaviest period, were its mean amount to fall evenly: the least it can be, for a shower
    /// within it is heavier.</summary>
    public RainIntensity LeastIntensity => Classed(HeaviestRate);

    /// <summary>Gets how long after the window no rain is worth a mention.</summary>
    public TimeSpan DryAfter => DryEnd - Window.End;

    /// <summary>Gets a value indicating whether the forecast ends before the dry time after the window does.</summary>
    public bool DryAfterIsCutShort => NextRain is null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        RainRemarks.Of(forecast.Findings, LeastIntensity == RainIntensity.Heavy, HeaviestRate);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        WeatherFormulas.All.SourcesOf(
            "weather-chance-strongest",
            "weather-chance-independent",
            "weather-at-least-patchy",
            "weather-at-least-general"
        );

    internal TimeSlot Window { get; }

    internal double Millimeters { get; }

    internal double HoursOfAmount { get; }

    /// <summary>In mm/h, of the period that would be heaviest if it rained.</summary>
    internal double HeaviestRate =>
        blocks
            .Where(b => b is { Chance: > 0, Millimeters: > 0 })
            .Select(b => RainMath.Rate(RainMath.MeanIfItRains(b.Millimeters!.Value, b.Chance!.Value), b.Slot.Hours))
            .DefaultIfEmpty()
            .Max();

    private IEnumerable<double> Chances => blocks.Select(b => b.Chance).OfType<double>();

    private RainBlock? NextRain
    {
        get
        {
            double mention = WeatherConstants.All["slight-chance"] / 100;
            var later = forecast.Blocks.Where(b => b.Slot.Start >= Window.End && b.Chance >= mention).ToList();
            return later.Count == 0 ? null : later.MinBy(b => b.Slot.Start);
        }
    }

    private DateTimeOffset DryEnd
    {
        get
        {
            var told = forecast.Blocks.Where(b => b.Chance is not null && b.Slot.End > Window.End).Select(b => b.Slot.End);
            return NextRain?.Slot.Start ?? told.DefaultIfEmpty(Window.End).Max();
        }
    }

    /// <summary>The chance of at least an amount.</summary>
    /// <param name="amount">Amount; above 0.</param>
    /// <param name="shape">How amounts spread about their mean.</param>
    /// <returns>The chance by each rule for joining periods.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount that is not above 0, or an unknown shape.</exception>
    public RainChance AtLeast(Length amount, RainShape shape = RainShape.Patchy)
    {
        double millimeters = amount.Millimeters;
        Guard.Above(millimeters, 0, "mm", nameof(amount));
        Guard.Defined(shape);
        return new()
        {
            AsStrongestPeriod = OneEvent(ChanceAtLeast),
            AsOneOfIndependent = OneEvent(ChanceOfAny),
            AsIndependentPeriods = Fraction.FromValue(Math.Min(1, RainMath.AtLeast(shape, Periods(), millimeters))),
        };

        Fraction OneEvent(Fraction chance) => Fraction.FromValue(RainMath.AtLeast(shape, chance.Value, millimeters, Millimeters));
    }

    /// <summary>The amount that is exceeded with a chance, where one event as likely as the strongest period holds it
    /// all.</summary>
    /// <param name="chance">Chance; above 0.</param>
    /// <returns>The amount; zero where rain itself is no more likely than that.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance of 0.</exception>
    public Length ExceededWith(Fraction chance)
    {
        Guard.Above(chance.Value, 0, "(a chance)", nameof(chance));
        bool isReached = ChanceAtLeast > chance && Millimeters > 0;
        return isReached
            ? Length.FromMillimeters(
                RainMath.ExceededWith(RainMath.MeanIfItRains(Millimeters, ChanceAtLeast.Value), ChanceAtLeast.Value, chance.Value)
            )
            : Length.Zero;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => RainWork.Lines(blocks);

    /// <summary>Lays out the chance of at least an amount, where one event as likely as the strongest period holds it
    /// all.</summary>
    /// <param name="amount">Amount; above 0.</param>
    /// <param name="shape">How amounts spread about their mean.</param>
    /// <returns>The lines; none where no rain is told.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An amount that is not above 0, or an unknown shape.</exception>
    public ImmutableArray<WorkedLine> ShowWork(Length amount, RainShape shape = RainShape.Patchy)
    {
        double millimeters = amount.Millimeters;
        return RainWork.Lines(
            Millimeters,
            ChanceAtLeast.Value,
            Guard.Above(millimeters, 0, "mm", nameof(amount)),
            Guard.Defined(shape)
        );
    }

    /// <summary>Lays out the amount that is exceeded with a chance.</summary>
    /// <param name="chance">Chance; above 0.</param>
    /// <returns>The line; none where rain itself is no more likely than that.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance of 0.</exception>
    public ImmutableArray<WorkedLine> ShowWork(Fraction chance)
    {
        double millimeters = ExceededWith(chance).Millimeters;
        double mean = RainMath.MeanIfItRains(Millimeters, ChanceAtLeast.Value);
        return millimeters > 0 ? [RainWork.Exceeded(mean, ChanceAtLeast.Value, chance.Value)] : [];
    }

    internal static RainIntensity Classed(double millimetersPerHour) =>
        IsUpTo(millimetersPerHour, "light-rain-to") ? RainIntensity.Light
        : IsUpTo(millimetersPerHour, "moderate-rain-to") ? RainIntensity.Moderate
        : RainIntensity.Heavy;

    /// <summary>The limits are printed in hundredths of an inch and belong to the lighter class.</summary>
    private static bool IsUpTo(double millimetersPerHour, string limit) =>
        millimetersPerHour <= WeatherUnit.Millimeters(WeatherConstants.All[limit]) + 1e-9;

    /// <summary>Chance and amount of each period, of one that is cut its share.</summary>
    private IEnumerable<(double Chance, double Amount)> Periods() =>
        blocks.Select(b => (b.Chance ?? 0, (b.Millimeters ?? 0) * b.Slot.HoursShared(Window) / b.Slot.Hours));

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
