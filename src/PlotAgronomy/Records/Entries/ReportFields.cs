using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Records;

/// <summary>The fields of a soil report; its readings are the parts.</summary>
internal static class ReportFields
{
    private const string BufferMark = "=";
    private const string Subsoil = "subsoil";

    internal static void Write(FieldWriter to, SoilReport report)
    {
        to.Text("laboratory", report.Laboratory);
        to.Text("program", report.Program);
        to.Date("sampled", report.SampledOn);
        to.Number("water-ph", report.WaterPh?.Value);
        to.Number("salt-ph", report.SaltPh?.Value);
        to.List("buffer-ph", report.BufferPhs.Select(b => $"{SoilWords.Buffers[b.Buffer]}{BufferMark}{ExactText.Of(b.Value)}"));
        to.Number("unnamed-buffer-ph", report.UnnamedBufferPh);
        to.Value("acidity", report.ExchangeableAcidity);
        to.Value("exchange-capacity", report.PrintedExchangeCapacity);
        to.Value("base-saturation", report.PrintedBaseSaturation);
        to.Value("organic-matter", report.OrganicMatter);
        to.Value("humic-matter", report.HumicMatter);
        to.Value("buffer-capacity", report.LimeBufferCapacity);
        to.Quantity("weight-per-volume", report.WeightPerVolume?.GramsPerCubicCentimeter, "g/cm3");
        to.Quantity("depth", report.SampledDepth?.Inches, "in");
        to.Choice("soil-class", report.SoilClass, SoilWords.Classes);
        to.Choice("texture", report.Texture, SoilWords.Textures);
        to.Choice("sample", report.SampleMoisture, SoilWords.SampleStates);
        to.Text("phosphorus-rating", report.PrintedPhosphorusRating);
        foreach (var reading in report.Readings)
        {
            Write(to.Part(), reading, null);
        }

        if (report.SubsoilPotassium is { } below)
        {
            Write(to.Part(), below, Subsoil);
        }
    }

    internal static SoilReport Read(FieldReader from)
    {
        var readings = from.Parts.Select(p => (Layer: p.TextOrNull("layer"), Reading: ReadReading(p))).ToList();
        string laboratory = from.Text("laboratory");
        var buffers = from.List("buffer-ph").Select(text => Buffer(from, text)).ToImmutableArray();
        double? density = from.QuantityOrNull("weight-per-volume", "g/cm3");
        double? depth = from.QuantityOrNull("depth", "in");
        return from.Try("laboratory", () => new SoilReport
        {
            Laboratory = laboratory,
            Program = from.TextOrNull("program"),
            SampledOn = from.DateOrNull("sampled"),
            WaterPh = from.NumberOrNull("water-ph") is { } water
                    ? from.Try("water-ph", () => WaterPh.FromValue(water))
                    : null,
            SaltPh = from.NumberOrNull("salt-ph") is { } salt ? from.Try("salt-ph", () => SaltPh.FromValue(salt)) : null,
            BufferPhs = buffers,
            UnnamedBufferPh = from.NumberOrNull("unnamed-buffer-ph"),
            ExchangeableAcidity = from.ValueOrNull<CationCharge>("acidity"),
            PrintedExchangeCapacity = from.ValueOrNull<CationCharge>("exchange-capacity"),
            PrintedBaseSaturation = from.ValueOrNull<Fraction>("base-saturation"),
            OrganicMatter = from.ValueOrNull<Fraction>("organic-matter"),
            HumicMatter = from.ValueOrNull<Fraction>("humic-matter"),
            LimeBufferCapacity = from.ValueOrNull<LimeBufferCapacity>("buffer-capacity"),
            WeightPerVolume = density is { } grams ? Density.FromGramsPerCubicCentimeter(grams) : null,
            SampledDepth = depth is { } inches ? Length.FromInches(inches) : null,
            SoilClass = from.ChoiceOrNull("soil-class", SoilWords.Classes),
            Texture = from.ChoiceOrNull("texture", SoilWords.Textures),
            SampleMoisture = from.ChoiceOrNull("sample", SoilWords.SampleStates),
            PrintedPhosphorusRating = from.TextOrNull("phosphorus-rating"),
            Readings = [.. readings.Where(r => r.Layer is null).Select(r => r.Reading)],
            SubsoilPotassium = readings.Where(r => r.Layer is not null).Select(r => r.Reading).SingleOrDefault(),
        });
    }

    private static void Write(FieldWriter to, SoilReading reading, string? layer)
    {
        to.Text("layer", layer);
        to.Choice<SoilAnalyte>("analyte", reading.Analyte, SoilWords.Analytes);
        to.Number("value", reading.PrintedValue);
        to.Choice<SoilTestUnit>("unit", reading.Unit, SoilWords.Units);
        to.Choice<Extractant>("extractant", reading.Extractant, SoilWords.Extractants);
        to.Flag("as-oxide", reading.Form == PrintedForm.Oxide ? true : null);
        to.Flag("less-than", reading.IsUpperLimit ? true : null);
    }

    private static SoilReading ReadReading(FieldReader from)
    {
        var analyte = from.Choice("analyte", SoilWords.Analytes);
        double value = from.Number("value");
        var unit = from.Choice("unit", SoilWords.Units);
        var extractant = from.Choice("extractant", SoilWords.Extractants);
        var form = from.FlagOrNull("as-oxide") == true ? PrintedForm.Oxide : PrintedForm.Element;
        bool isLimit = from.FlagOrNull("less-than") == true;
        return from.Try("value", () =>
            SoilReading.FromPrinted(analyte, value, unit, extractant, form) with
            {
                IsUpperLimit = isLimit,
            }
        );
    }

    private static BufferPh Buffer(FieldReader from, string text) => from.Try("buffer-ph", () =>
        {
            var (name, value) = ExactText.Halves(text, BufferMark);
            return BufferPh.FromValue(ExactText.Number(value), from.Word("buffer-ph", name, SoilWords.Buffers));
        });
}
