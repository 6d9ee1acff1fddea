using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>A published thermal time of one kind: base temperature and degree days belong together and are never mixed.</summary>
internal sealed class ThermalTime
{
    private static readonly Catalog<ThermalTime> Catalog = new(
        "thermal time",
        () => Table.Read("Weather/Data/thermal-times.csv", row => new ThermalTime(row)),
        t => t.Id,
        t => t.Origin.Status
    );

    private ThermalTime(CsvRow row)
    {
        Id = row.Text("id");
        KindIds = row.List("kind_ids");
        Stage = row.Choice<ThermalStage>("stage");
        BaseCelsius = row.Number("base_c");
        BestCelsius = row.NumberOrNull("best_c");
        HighestCelsius = row.NumberOrNull("highest_c");
        DegreeDays = row.Number("degree_days_c");
        DegreeDaysPerMillimeter = row.NumberOrNull("degree_days_c_per_mm") ?? 0;
        Origin = row.Origin();
    }

    internal string Id { get; }

    internal ImmutableArray<string> KindIds { get; }

    internal ThermalStage Stage { get; }

    internal double BaseCelsius { get; }

    internal double? BestCelsius { get; }

    internal double? HighestCelsius { get; }

    internal double DegreeDays { get; }

    internal double DegreeDaysPerMillimeter { get; }

    internal Origin Origin { get; }

    internal static ImmutableArray<ThermalTime> Everything => Catalog.Everything;

    internal static ThermalTime Find(string id) => Catalog.Find(id);

    /// <summary>The first that was seen in print for a kind.</summary>
    internal static ThermalTime? Of(CropKind kind, ThermalStage stage) =>
        Catalog.All.FirstOrDefault(t => t.Stage == stage && t.KindIds.Contains(kind.Id));

    internal double At(double depthMillimeters) =>
        EmergenceMath.ThermalTimeAtDepth(DegreeDays, DegreeDaysPerMillimeter, depthMillimeters);

    internal double OfDay(double celsius) => EmergenceMath.OfDay(celsius, BaseCelsius, BestCelsius, HighestCelsius);
}
