using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>How long the surface of a bare seedbed stays moist: the water balance of FAO-56's evaporating layer.</summary>
/// <remarks>The layer is 4 in deep and seed lies in its top quarter, which is dry long before the layer is. Run-off, dew and
/// mulch are
/// not considered.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedbedOutlook : IWorkedResult
{
    private readonly SurfaceLayer layer;
    private readonly ImmutableArray<ReferenceEvaporation> evaporation;
    private readonly ImmutableArray<SeedbedDay> driest;
    private readonly ImmutableArray<SeedbedDay> wettest;

    private SeedbedOutlook(SeedbedRequest request, SurfaceLayer layer, ImmutableArray<ReferenceEvaporation> evaporation)
    {
        Request = request;
        this.layer = layer;
        this.evaporation = evaporation;
        driest = Track(SurfaceEnd.Driest);
        Days = Track(SurfaceEnd.Middle);
        wettest = Track(SurfaceEnd.Wettest);
    }

    /// <summary>Gets the days of a surface in the middle of what is printed for its texture.</summary>
    public ImmutableArray<SeedbedDay> Days { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            MemoryGate.FindingFor("the surface layer", layer.Origin),
            FindingCatalog.Create(
                WeatherCodes.LayerIsDeeper,
                ("layer", $"{Amounts.Print(LayerDepth, "in", 1)}"),
                ("seed", $"{Amounts.Print(SeedZone, "in", 1)}")
            ),
            .. evaporation.SelectMany(e => e.Findings),
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => layer.Origin.Sources;

    internal SeedbedRequest Request { get; }

    private static double Basal => WeatherConstants.All["bare-soil-basal"];

    private static Length LayerDepth => Length.FromMillimeters(WeatherConstants.All["surface-layer"]);

    private static Length SeedZone => Length.FromMillimeters(WeatherConstants.All["seed-zone"]);

    /// <summary>Works out the seedbed of a bare plot.</summary>
    /// <param name="request">The seedbed and the weather over it.</param>
    /// <returns>The outlook; open where the texture, the rain of a day or its temperatures are not known.</returns>
    public static Answer<SeedbedOutlook> Of(SeedbedRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (request.Texture is not { } texture || SurfaceLayer.Of(texture) is not { } layer)
        {
            return Answers.Open(
                () => [WeatherQuestions.Texture()],
                () => WeatherQuestions.Texture().Cases(t => Of(request, SurfaceLayer.Of(t)!))
            );
        }

        return Of(request, layer);
    }

    /// <summary>The days, among those from a date on, that the surface stays moist enough, one after the other.</summary>
    /// <param name="from">Date.</param>
    /// <param name="placement">Where the seed lies.</param>
    /// <returns>The fewest and the most days that the printed range of the texture allows.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown placement.</exception>
    public (int Fewest, int Most) MoistDays(DateOnly from, SeedPlacement placement)
    {
        double limit = MoistLimit(placement);
        int Count(ImmutableArray<SeedbedDay> days) =>
            days.SkipWhile(d => d.Date < from).TakeWhile(d => d.Reduction >= limit).Count();
        int one = Count(driest),
            other = Count(wettest);
        return (Math.Min(one, other), Math.Max(one, other));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Days.Select((day, i) => SeedbedWork.Lines(day, layer.At(SurfaceEnd.Middle), Basal, Request.Days[i]))
                .SelectMany(l => l),
        ];

    /// <summary>The share of the greatest evaporation below which the surface is too dry for seed that lies there.</summary>
    internal static double MoistLimit(SeedPlacement placement) =>
        WeatherConstants.All[
            Guard.Defined(placement) switch
            {
                SeedPlacement.OnSurface => "moist-on-surface",
                SeedPlacement.PressedIn => "moist-pressed-in",
                _ => "moist-covered",
            }
        ];

    private static Answer<SeedbedOutlook> Of(SeedbedRequest request, SurfaceLayer layer)
    {
        var evaporation = ImmutableArray.CreateBuilder<ReferenceEvaporation>();
        foreach (var day in request.Days)
        {
            string date = DateText.Of(day.Date);
            if (day.Rain is null)
            {
                return Answers.Open<SeedbedOutlook>(() => [WeatherQuestions.Rain(date, date)]);
            }

            var reference = ReferenceEvaporation.Of(request.Place, day, request.Elevation);
            if (!reference.TryGet(out var known))
            {
                return Answers.Open<SeedbedOutlook>(() => reference.Questions);
            }

            evaporation.Add(known);
        }

        var outlook = new SeedbedOutlook(request, layer, evaporation.ToImmutable());
        return Answers.Given(outlook, () => outlook.Findings);
    }

    private ImmutableArray<SeedbedDay> Track(SurfaceEnd end)
    {
        var (readily, total) = layer.At(end);
        double before = Request.Start == SurfaceStart.Dry ? total : 0;
        var steps = Request.Days.Select(
            (day, i) =>
            {
                var (wind, humidity, height) = SeedbedClimate.Of(day);
                double greatest = SeedbedMath.GreatestCoefficient(
                    WeatherConstants.All["greatest-coefficient"],
                    wind,
                    humidity,
                    height,
                    Basal
                );
                return new SeedbedTrack.Step(day.Date, day.RainMillimeters!.Value, evaporation[i].Millimeters, greatest);
            }
        );
        return SeedbedTrack.Run(steps, readily, total, before, Basal);
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
