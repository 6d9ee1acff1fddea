using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>Laws of the soil room.</summary>
[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(SoilArbitraries)])]
public class SoilProperties
{
    private static readonly SampledSoil Known = new()
    {
        Layer = SampledLayer.FromDepth(Length.FromInches(7.5)),
        WeightPerVolume = Density.FromGramsPerCubicCentimeter(1.17),
        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9.3),
    };

    [Property]
    public bool A_unit_converts_there_and_back(SoilReading reading, SoilTestUnit unit)
    {
        if (!SoilArbitraries.Converts(reading, unit))
        {
            return true;
        }

        var there = reading.ConvertTo(unit, Known).Converted;
        return Near.Equal(reading.PrintedValue, there.ConvertTo(reading.Unit, Known, reading.Form).Converted.PrintedValue, 1e-12);
    }

    [Property]
    public bool A_detour_through_any_unit_changes_nothing(SoilReading reading, SoilTestUnit detour)
    {
        if (!SoilArbitraries.Converts(reading, detour) || !SoilArbitraries.Converts(reading, SoilTestUnit.KilogramsPerHectare))
        {
            return true;
        }

        // Volume readings reach lb/ac by depth, weight readings by the layer's weight: a detour stays on one path only with a matching layer.
        var soil = new SampledSoil { Layer = SampledLayer.Measured(Length.FromInches(7.5), Density.FromGramsPerCubicCentimeter(1.17)), WeightPerVolume = Known.WeightPerVolume, ExchangeCapacity = Known.ExchangeCapacity };
        double straight = reading.ConvertTo(SoilTestUnit.KilogramsPerHectare, soil).Converted.PrintedValue;
        double around = reading.ConvertTo(detour, soil).Converted.ConvertTo(SoilTestUnit.KilogramsPerHectare, soil).Converted.PrintedValue;
        return Near.Equal(straight, around, 1e-12);
    }

    [Property]
    public bool Element_and_oxide_convert_there_and_back(SoilReading reading)
    {
        if (reading.Analyte is not (SoilAnalyte.Phosphorus or SoilAnalyte.Potassium))
        {
            return true;
        }

        var oxide = reading.ConvertTo(reading.Unit, Known, PrintedForm.Oxide).Converted;
        return oxide.PrintedValue >= reading.PrintedValue
            && Near.Equal(reading.PrintedValue, oxide.ConvertTo(reading.Unit, Known, reading.Form).Converted.PrintedValue, 1e-12);
    }

    [Property]
    public bool Twice_the_depth_holds_twice_the_pounds(PositiveInt sixteenths)
    {
        double inches = Math.Min(sixteenths.Get, 384) / 16.0;
        double One(double depth) => SampledLayer.FromDepth(Length.FromInches(depth)).SoilMass.PoundsPerAcre;
        double Measured(double depth) => SampledLayer.Measured(Length.FromInches(depth), Density.FromGramsPerCubicCentimeter(1.3)).SoilMass.PoundsPerAcre;
        return Near.Equal(2 * One(inches), One(2 * inches)) && Near.Equal(2 * Measured(inches), Measured(2 * inches));
    }

    [Property]
    public bool The_unit_of_the_cations_does_not_matter(CationDraw draw)
    {
        var ppm = draw.Report(SoilTestUnit.PartsPerMillion, 1);
        var pounds = draw.Report(SoilTestUnit.PoundsPerAcre, 2);
        return Near.Equal(Capacity(ppm), Capacity(pounds), 1e-12);
    }

    [Property]
    public bool The_order_of_the_readings_does_not_matter(CationDraw draw)
    {
        var report = draw.Report(SoilTestUnit.PartsPerMillion, 1);
        var reversed = new SoilReport { Laboratory = report.Laboratory, Readings = [.. report.Readings.Reverse()], WaterPh = report.WaterPh, BufferPhs = report.BufferPhs, SampledDepth = report.SampledDepth };
        return Near.Equal(Capacity(report), Capacity(reversed), 1e-12)
            && report.Check(SoilSamples.Day).Select(f => f.Code).Order().SequenceEqual(reversed.Check(SoilSamples.Day).Select(f => f.Code).Order());
    }

    [Property]
    public bool A_lower_buffer_ph_never_means_a_smaller_capacity(CationDraw draw, PositiveInt hundredths)
    {
        double lower = Math.Max(3, draw.BufferPh - hundredths.Get / 100.0);
        return Capacity(draw.Report(SoilTestUnit.PartsPerMillion, 1, lower)) >= Capacity(draw.Report(SoilTestUnit.PartsPerMillion, 1));
    }

    [Property]
    public bool Saturations_of_the_cations_sum_to_the_base_saturation(CationDraw draw)
    {
        var balance = CationBalance.For(draw.Report(SoilTestUnit.PartsPerMillion, 1), AcidityTerm.Clemson);
        return balance.BaseSaturation is not { } saturation || Near.Equal(saturation.Value, balance.Bases.Sum(b => b.Saturation!.Value.Value), 1e-12);
    }

    [Property]
    public bool The_parts_sum_to_the_capacity(CationDraw draw)
    {
        var balance = CationBalance.For(draw.Report(SoilTestUnit.PartsPerMillion, 1), AcidityTerm.Clemson);
        return Near.Equal(balance.Capacity!.Value.Milliequivalents, balance.Acidity!.Value.Milliequivalents + balance.Bases.Sum(b => b.Charge.Milliequivalents), 1e-12);
    }

    [Property]
    public bool An_extractant_conversion_is_proportional(PositiveInt tenths)
    {
        double One(double value) => ExtractantConversion.TriStateBrayToMehlich3.Convert(SoilSamples.Phosphorus(value, extractant: Extractant.BrayP1)).Converted.PrintedValue;
        return Near.Equal(2 * One(tenths.Get / 10.0), One(tenths.Get / 5.0));
    }

    private static double Capacity(SoilReport report) => CationBalance.For(report, AcidityTerm.Clemson).Capacity!.Value.Milliequivalents;
}
