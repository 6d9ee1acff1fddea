using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Readings and their conversions, acidity, exchange capacity, programs, sampling and plausibility.</summary>
internal static class SoilSums
{
    private static readonly DateOnly Sampled = new(2026, 3, 1);

    internal static void Record(Recorder recorder)
    {
        Acidity(recorder);
        Charges(recorder);
        Layers(recorder);
        UnitConversions(recorder);
        Extractants(recorder);
        Balances(recorder);
        Programs(recorder);
        Sampling(recorder);
        Plausibility(recorder);
    }

    internal static SoilReading Reading(SoilAnalyte analyte, double value, SoilTestUnit unit = SoilTestUnit.PartsPerMillion,
        Extractant extractant = Extractant.Mehlich3) =>
        SoilReading.FromPrinted(analyte, value, unit, extractant);

    private static SoilReport Report(
        BufferPh? buffer, double waterPh = 5.6, double? density = null, CationCharge? printed = null,
            CationCharge? acidity = null) =>
        new()
        {
            Laboratory = "a laboratory",
            Readings = Cations(110, 95, 880, 12),
            WaterPh = WaterPh.FromValue(waterPh),
            BufferPhs = buffer is null ? [] : [buffer],
            SampledDepth = Inches(20.0 / 3),
            SampledOn = Sampled,
            WeightPerVolume = density is { } grams ? GramsPerCubicCentimeter(grams) : null,
            PrintedExchangeCapacity = printed,
            ExchangeableAcidity = acidity,
        };

    private static ImmutableArray<SoilReading> Cations(double potassium, double magnesium, double calcium, double sodium) =>
    [
        Reading(SoilAnalyte.Potassium, potassium, extractant: Extractant.AmmoniumAcetate),
        Reading(SoilAnalyte.Magnesium, magnesium, extractant: Extractant.AmmoniumAcetate),
        Reading(SoilAnalyte.Calcium, calcium, extractant: Extractant.AmmoniumAcetate),
        Reading(SoilAnalyte.Sodium, sodium, extractant: Extractant.AmmoniumAcetate),
    ];

    private static void Acidity(Recorder recorder)
    {
        recorder.Call("soil: a water pH", () => WaterPh.FromValue(5.65));
        recorder.Call("soil: a salt pH", () => SaltPh.FromValue(5.1));
        recorder.Call("soil: a pH beyond the scale", () => WaterPh.FromValue(15));
        foreach (var buffer in Enum.GetValues<SoilBuffer>())
        {
            recorder.Call($"soil: a buffer pH by {Words(buffer)}", () => BufferPh.FromValue(6.4, buffer));
            recorder.Call($"soil: a lime test index by {Words(buffer)}", () => BufferPh.FromLimeTestIndex(64, buffer));
        }

        recorder.Call("soil: equal pH values", () => new[]
        {
            WaterPh.FromValue(6) == WaterPh.FromValue(6), WaterPh.FromValue(6) != WaterPh.FromValue(6.1),
            SaltPh.FromValue(6) == SaltPh.FromValue(6), SaltPh.FromValue(6) != SaltPh.FromValue(6),
            BufferPh.FromValue(6, SoilBuffer.Smp) == BufferPh.FromValue(6, SoilBuffer.Smp),
            BufferPh.FromValue(6, SoilBuffer.Smp) != BufferPh.FromValue(6, SoilBuffer.Sikora),
        });
    }

    private static void Charges(Recorder recorder)
    {
        recorder.Call("soil: a charge by weight", () => CationCharge.FromMilliequivalentsPer100Grams(7.5));
        recorder.Call("soil: a charge by volume", () => CationCharge.FromMilliequivalentsPer100CubicCentimeters(7.5));
        recorder.Call("soil: a charge by volume turned to weight",
            () => CationCharge.FromMilliequivalentsPer100CubicCentimeters(7.5).ByWeight(GramsPerCubicCentimeter(1.17)));
        recorder.Call("soil: a charge by weight turned to weight",
            () => CationCharge.FromMilliequivalentsPer100Grams(7.5).ByWeight(GramsPerCubicCentimeter(1.17)));
        recorder.Call("soil: equal charges", () => new[]
        {
            CationCharge.FromMilliequivalentsPer100Grams(1) == CationCharge.FromMilliequivalentsPer100CubicCentimeters(1),
            CationCharge.FromMilliequivalentsPer100Grams(1) != CationCharge.FromMilliequivalentsPer100CubicCentimeters(1),
        });
    }

    private static void Layers(Recorder recorder)
    {
        recorder.Call("soil: the furrow slice", () => SampledLayer.FurrowSlice);
        recorder.Call("soil: soil taken as usual", () => SampledSoil.Conventional);
        foreach (double inches in new[] { 2, 4, 6, 20.0 / 3, 8, 12 })
        {
            recorder.Call($"soil: a layer of {Two(inches)} in", () => SampledLayer.FromDepth(Inches(inches)));
            recorder.Call($"soil: a layer of {Two(inches)} in by convention", () => SampledLayer.Conventional(Inches(inches)));
            recorder.Call($"soil: a layer of {Two(inches)} in of 1.3 g/cm3",
                () => SampledLayer.Measured(Inches(inches), GramsPerCubicCentimeter(1.3)));
        }

        recorder.Call("soil: the soil of a report",
            () => SampledSoil.For(Report(null, density: 1.12, printed: CationCharge.FromMilliequivalentsPer100Grams(9))));
    }

    private static string Two(double number) => number.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    private static void UnitConversions(Recorder recorder)
    {
        var soil = new SampledSoil
        {
            Layer = SampledLayer.FurrowSlice,
            WeightPerVolume = GramsPerCubicCentimeter(1.1),
            ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(12),
        };
        SoilAnalyte[] analytes = [SoilAnalyte.Phosphorus, SoilAnalyte.Potassium, SoilAnalyte.Calcium, SoilAnalyte.Zinc,
            SoilAnalyte.SolubleSalts];
        foreach (var analyte in analytes)
        {
            foreach (var from in Enum.GetValues<SoilTestUnit>())
            {
                foreach (var to in Enum.GetValues<SoilTestUnit>())
                {
                    recorder.Call($"soil: {Words(analyte)} of 40 in {Words(from)} told in {Words(to)}",
                        () => Reading(analyte, 40, from).ConvertTo(to, soil).Converted.PrintedValue);
                }
            }
        }

        recorder.Call("soil: a reading converted, in full",
            () => Reading(SoilAnalyte.Phosphorus, 40).ConvertTo(SoilTestUnit.PoundsPerAcre, SampledSoil.Conventional));
        recorder.Call("soil: phosphorus told as phosphate",
            () =>
                Reading(SoilAnalyte.Phosphorus, 40).ConvertTo(SoilTestUnit.PoundsPerAcre, SampledSoil.Conventional,
                    PrintedForm.Oxide));
        recorder.Call("soil: potassium told as potash",
            () =>
                Reading(SoilAnalyte.Potassium, 140).ConvertTo(SoilTestUnit.KilogramsPerHectare, SampledSoil.Conventional,
                    PrintedForm.Oxide));
        recorder.Call("soil: phosphate told as phosphorus", () =>
            SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 90, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich1,
                PrintedForm.Oxide).ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.Conventional));
        recorder.Call("soil: an index without the soil's weight",
            () =>
                Reading(SoilAnalyte.Phosphorus, 40, SoilTestUnit.NorthCarolinaIndex).ConvertTo(SoilTestUnit.PoundsPerAcre,
                    SampledSoil.Conventional));
        recorder.Call("soil: equal readings",
            () =>
                new[] { Reading(SoilAnalyte.Zinc, 1) == Reading(SoilAnalyte.Zinc, 1),
                    Reading(SoilAnalyte.Zinc, 1) != Reading(SoilAnalyte.Zinc, 2) });
    }

    private static void Extractants(Recorder recorder)
    {
        foreach (var conversion in ExtractantConversion.All.AddRange(ExtractantConversion.Unchecked))
        {
            recorder.Add($"soil: the extractant conversion {conversion.Id}", "", ExtractantConversion.Find(conversion.Id));
            foreach (double value in new[] { 5.0, 22, 85 })
            {
                recorder.Call($"soil: {value} by the extractant conversion {conversion.Id}",
                    () => conversion.Convert(Reading(conversion.Analyte, value, extractant: conversion.From)));
            }
        }

        recorder.Call("soil: an extractant conversion that is not there", () => ExtractantConversion.Find("none"));
        foreach (var from in Enum.GetValues<Extractant>())
        {
            foreach (var to in Enum.GetValues<Extractant>())
            {
                string way = $"{Words(from)} to {Words(to)}";
                recorder.Call($"soil: phosphorus conversions from {way}",
                    () => ExtractantConversion.Between(SoilAnalyte.Phosphorus, from, to).Select(c => c.Id).ToArray());
                recorder.Call($"soil: a reason against phosphorus from {way}",
                    () => ExtractantConversion.ReasonAgainst(SoilAnalyte.Phosphorus, from, to));
                recorder.Call($"soil: potassium conversions from {way}",
                    () => ExtractantConversion.Between(SoilAnalyte.Potassium, from, to).Select(c => c.Id).ToArray());
            }
        }
    }

    private static void Balances(Recorder recorder)
    {
        foreach (var term in AcidityTerm.All.AddRange(AcidityTerm.Unchecked))
        {
            recorder.Add($"soil: the acidity term {term.Id}", "", AcidityTerm.Find(term.Id));
            foreach (var buffer in term.Buffers)
            {
                foreach (double reading in new[] { 5.8, 6.5, 7.7, 8.1 })
                {
                    recorder.Call($"soil: base saturation by {term.Id} at {Words(buffer)} {reading}",
                        () => CationBalance.For(Report(BufferPh.FromValue(reading, buffer), density: 1.05), term));
                }
            }
        }

        foreach (var buffer in Enum.GetValues<SoilBuffer>())
        {
            recorder.Call($"soil: acidity terms of the buffer {Words(buffer)}",
                () => AcidityTerm.For(buffer).Select(t => t.Id).ToArray());
            recorder.Call($"soil: base saturation by every term of {Words(buffer)}",
                () => CationBalance.ByEveryTerm(Report(BufferPh.FromValue(6.6, buffer), density: 1.05)));
        }

        recorder.Call("soil: base saturation without a buffer",
            () => CationBalance.For(Report(null), AcidityTerm.Find("clemson")));
        recorder.Call("soil: base saturation of neutral ground without acidity",
            () => CationBalance.WithoutAcidity(Report(null, 6.8)));
        recorder.Call("soil: base saturation of sour ground without acidity", () => CationBalance.WithoutAcidity(Report(null)));
        recorder.Call("soil: base saturation with a printed acidity",
            () => CationBalance.FromPrintedAcidity(Report(null, acidity: CationCharge.FromMilliequivalentsPer100Grams(2))));
        recorder.Call("soil: base saturation, no acidity printed", () => CationBalance.FromPrintedAcidity(Report(null)));
        recorder.Call("soil: base saturation with the terms rounded",
            () =>
                CationBalance.For(Report(BufferPh.FromValue(7.7, SoilBuffer.AdamsEvans)),
                    AcidityTerm.Find("clemson")).WithTermsRounded(1));
        recorder.Call("soil: the share of one base",
            () =>
                CationBalance.For(Report(BufferPh.FromValue(7.7, SoilBuffer.AdamsEvans)),
                    AcidityTerm.Find("clemson")).Find(SoilAnalyte.Magnesium));
        recorder.Call("soil: base saturation unlike the printed capacity", () =>
            CationBalance.For(Report(BufferPh.FromValue(7.7, SoilBuffer.AdamsEvans),
                printed: CationCharge.FromMilliequivalentsPer100Grams(14)), AcidityTerm.Find("clemson")));
    }

    private static void Programs(Recorder recorder)
    {
        foreach (var program in SoilProgram.All)
        {
            recorder.Add($"soil: the program of {program.Institution.Name}", "", SoilProgram.FindIn(program.Institution.Name));
        }

        foreach (string name in new[] { "the oklahoma state lab", "Clemson, South Carolina", "Ohioville testing",
            "West Virginia" })
        {
            recorder.Call($"soil: the program of the laboratory '{name}'", () => SoilProgram.FindIn(name)?.Institution.Name);
            recorder.Call($"soil: the program of a report of '{name}'",
                () => SoilProgram.For(new SoilReport { Laboratory = name })?.Institution.Name);
        }

        var report = new SoilReport
        {
            Laboratory = "Ohio",
            Readings = [Reading(SoilAnalyte.Phosphorus, 18, extractant: Extractant.BrayP1), Reading(SoilAnalyte.Phosphorus, 24)],
            BufferPhs = [BufferPh.FromValue(6.5, SoilBuffer.Smp)],
            Texture = SoilTexture.Loam,
            OrganicMatter = Percent(3),
        };
        recorder.Call("soil: a report", () => report);
        recorder.Call("soil: the first reading of a report", () => report.Find(SoilAnalyte.Phosphorus));
        recorder.Call("soil: the reading by an extractant", () => report.Find(SoilAnalyte.Phosphorus, Extractant.Mehlich3));
        recorder.Call("soil: every reading of phosphorus", () => report.FindAll(SoilAnalyte.Phosphorus));
        recorder.Call("soil: the buffer pH of a report", () => report.FindBuffer(SoilBuffer.Smp));
        recorder.Call("soil: a buffer pH that is not on a report", () => report.FindBuffer(SoilBuffer.Sikora));
    }

    private static void Sampling(Recorder recorder)
    {
        foreach (var rule in SamplingRule.All)
        {
            recorder.Add($"soil: the sampling rule of {rule.Title}", "", rule);
        }

        foreach (int parts in new[] { 0, 1, 3 })
        {
            recorder.Call($"soil: sampling of {parts} parts, tilled", () => SamplingAdvice.ForPlot(parts, false));
            recorder.Call($"soil: sampling of {parts} parts, top-dressed", () => SamplingAdvice.ForPlot(parts, true, Sampled));
            recorder.Call($"soil: sampling of {parts} parts after an extreme rating",
                () => SamplingAdvice.ForPlot(parts, false, Sampled, true));
        }
    }

    private static void Plausibility(Recorder recorder)
    {
        var today = new DateOnly(2026, 4, 1);
        SoilReport Of(params SoilReading[] readings) => new()
        {
            Laboratory = "Ohio",
            Readings = [.. readings],
            WaterPh = WaterPh.FromValue(5.2),
            SaltPh = SaltPh.FromValue(5.6),
            BufferPhs = [BufferPh.FromValue(6.9, SoilBuffer.Smp)],
            SampledOn = Sampled,
            SampledDepth = Inches(8),
            OrganicMatter = Percent(12),
            Texture = SoilTexture.Sand,
            PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(30),
        };
        recorder.Call("soil: what is odd on an odd report",
            () => Of(Reading(SoilAnalyte.Phosphorus, 4000), Reading(SoilAnalyte.Potassium, 9000)).Check(today));
        recorder.Call("soil: what is odd on a sound report", () => Report(null, 6.2).Check(today));
        recorder.Call("soil: what is odd on an old report",
            () => Report(null, 6.2).Check(new DateOnly(2032, 4, 1)));
        recorder.Call("soil: what is odd against an earlier report",
            () =>
                Of(Reading(SoilAnalyte.Phosphorus, 90)).Check(today, Of(Reading(SoilAnalyte.Phosphorus, 10))));
        recorder.Call("soil: a sample as deep as the method wants",
            () => Report(null).CheckDepth(Inches(6), "a method"));
        recorder.Call("soil: a sample deeper than the method wants",
            () => Report(null).CheckDepth(Inches(3), "a method"));
        foreach (double typed in new[] { 2.9, 4.5, 6.2, 8.4, 62, 9.6 })
        {
            recorder.Call($"soil: the typed pH {typed}", () => SoilReport.CheckTypedPh(typed));
        }
    }
}
