using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>Published values, printed tables and hand algebra.</summary>
public class SoilWorkedExamples
{
    private const string File = "Soil/worked-soil.csv";

    public static TheoryData<string> Units => WorkedExamples.Ids(File, "unit");

    public static TheoryData<string> Layers => WorkedExamples.Ids(File, "layer");

    public static TheoryData<string> Extractants => WorkedExamples.Ids(File, "extractant");

    public static TheoryData<string> Capacities => WorkedExamples.Ids(File, "cec");

    [Theory, MemberData(nameof(Units))]
    public void A_unit_converts_as_printed(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var reading = SoilReading.FromPrinted(row.Choice<SoilAnalyte>("analyte"), row.Number("value"), row.Choice<SoilTestUnit>("from_unit"), row.Choice<Extractant>("extractant"), row.Choice<PrintedForm>("form"));
        var soil = new SampledSoil
        {
            Layer = row.NumberOrNull("depth_in") is { } inches ? SampledLayer.FromDepth(Length.FromInches(inches)) : SampledLayer.FurrowSlice,
            WeightPerVolume = row.NumberOrNull("g_cm3") is { } density ? Density.FromGramsPerCubicCentimeter(density) : null,
        };
        WorkedExamples.AssertMatches(row, reading.ConvertTo(row.Choice<SoilTestUnit>("to_unit"), soil, row.Choice<PrintedForm>("to_form")).Converted.PrintedValue);
    }

    [Theory, MemberData(nameof(Layers))]
    public void A_layer_weighs_as_printed(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var depth = Length.FromInches(row.Number("depth_in"));
        var layer = row.NumberOrNull("g_cm3") is { } density ? SampledLayer.Measured(depth, Density.FromGramsPerCubicCentimeter(density)) : SampledLayer.FromDepth(depth);
        WorkedExamples.AssertMatches(row, layer.SoilMass.PoundsPerAcre);
    }

    [Theory, MemberData(nameof(Extractants))]
    public void An_extractant_converts_as_printed(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var reading = SoilReading.FromPrinted(row.Choice<SoilAnalyte>("analyte"), row.Number("value"), row.Choice<SoilTestUnit>("from_unit"), row.Choice<Extractant>("extractant"));
        WorkedExamples.AssertMatches(row, ExtractantConversion.Find(row.Text("method")).Convert(reading).Converted.PrintedValue);
    }

    [Theory, MemberData(nameof(Capacities))]
    public void An_exchange_capacity_adds_up_as_printed(string id)
    {
        var row = WorkedExamples.Find(File, id);
        var balance = CationBalance.For(SoilSamples.Named(row.Text("value")), AcidityTerm.Find(row.Text("method")));
        WorkedExamples.AssertMatches(row, Quantity(balance, row));
    }

    private static double Quantity(CationBalance balance, CsvRow row) => row.Text("quantity") switch
    {
        "Acidity" or "AcidityTriState" => balance.Acidity!.Value.Milliequivalents,
        "BaseSum" or "BaseSumWithoutSodium" => balance.BaseSum.Milliequivalents,
        "Capacity" => balance.Capacity!.Value.Milliequivalents,
        "CapacityRounded" => balance.WithTermsRounded(2).Capacity!.Value.Milliequivalents,
        "BaseSaturation" => balance.BaseSaturation!.Value.Percent,
        var cation => balance.Find(Enum.Parse<SoilAnalyte>(cation))!.Charge.Milliequivalents,
    };
}
