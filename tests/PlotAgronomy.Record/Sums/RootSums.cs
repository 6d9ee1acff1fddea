using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Rates, fractions, printed and read amounts, whole packages.</summary>
internal static class RootSums
{
    private delegate bool Reader<T>(string? text, out T value, out string problem);

    internal static void Record(Recorder recorder)
    {
        Rates(recorder);
        Fractions(recorder);
        Packages(recorder);
        Printed(recorder);
        Read(recorder);
        Others(recorder);
    }

    private static void Rates(Recorder recorder)
    {
        var rate = PerAcre(137.5);
        (string Words, ApplicationRate Rate)[] made =
        [
            ("137.5 lb/ac", rate),
            ("250 kg/ha", ApplicationRate.FromKilogramsPerHectare(250)),
            ("3.2 t/ha", ApplicationRate.FromTonnesPerHectare(3.2)),
            ("1.75 ton/ac", ApplicationRate.FromShortTonsPerAcre(1.75)),
            ("6.5 lb/1000 ft2", ApplicationRate.FromPoundsPerThousandSquareFeet(6.5)),
            ("11 oz/1000 ft2", ApplicationRate.FromOuncesPerThousandSquareFeet(11)),
            ("21 lb on 0.62 ac", ApplicationRate.FromMassAndArea(Pounds(21), Acres(0.62))),
            ("nothing", ApplicationRate.Zero),
        ];
        foreach (var (words, one) in made)
        {
            recorder.Add($"root: the rate {words} in every unit", "lb/ac", one.PoundsPerAcre);
            recorder.Add($"root: the rate {words} in every unit", "kg/ha", one.KilogramsPerHectare);
            recorder.Add($"root: the rate {words} in every unit", "t/ha", one.TonnesPerHectare);
            recorder.Add($"root: the rate {words} in every unit", "ton/ac", one.ShortTonsPerAcre);
            recorder.Add($"root: the rate {words} in every unit", "lb/1000 ft2", one.PoundsPerThousandSquareFeet);
            recorder.Add($"root: the rate {words} in every unit", "oz/1000 ft2", one.OuncesPerThousandSquareFeet);
            recorder.Add($"root: the rate {words} in every unit", "text", one.ToString());
        }

        recorder.Call("root: a rate over an area", () => rate.Over(Acres(0.62)));
        recorder.Call("root: a rate times a number", () => rate * 1.25);
        recorder.Call("root: rates added", () => rate + PerAcre(12.25));
        recorder.Call("root: a rate by another", () => rate / PerAcre(12.25));
        recorder.Call("root: a rate by nothing", () => rate / ApplicationRate.Zero);
        recorder.Call("root: rates in order", () => new[]
        {
            rate < PerAcre(138), rate > PerAcre(138), rate <= PerAcre(137.5), rate >= PerAcre(137.5), rate == PerAcre(137.5),
            rate != PerAcre(137.5),
        });
        recorder.Call("root: rates compared", () => rate.CompareTo(PerAcre(138)));
        recorder.Call("root: a rate below nothing", () => PerAcre(-1));
        recorder.Call("root: a rate without an area", () => ApplicationRate.FromMassAndArea(Pounds(1), Acres(0)));
    }

    private static void Fractions(Recorder recorder)
    {
        var fraction = Percent(12.5);
        recorder.Call("root: a fraction from percent", () => fraction);
        recorder.Call("root: a fraction in percent", () => Fraction.FromValue(0.875).Percent);
        recorder.Call("root: all and none", () => new[] { Fraction.One, Fraction.Zero });
        recorder.Call("root: fractions in order", () => new[]
        {
            fraction < Fraction.One, fraction > Fraction.One, fraction <= Percent(12.5), fraction >= Percent(12.5),
            fraction == Percent(12.5), fraction != Percent(12.5),
        });
        recorder.Call("root: fractions compared", () => fraction.CompareTo(Fraction.One));
        recorder.Call("root: a fraction above all", () => Percent(100.1));
    }

    private static void Packages(Recorder recorder)
    {
        foreach (double needed in new[] { 0, 12, 49.999999999, 50, 50.1, 74.9, 75.1, 430 })
        {
            recorder.Call($"root: 50-lb bags for {needed} lb, rounded up",
                () => Package.RoundUp(Pounds(needed), Pounds(50)));
            recorder.Call($"root: 50-lb bags for {needed} lb, to the nearest",
                () => Package.RoundToNearest(Pounds(needed), Pounds(50)));
        }
    }

    private static void Printed(Recorder recorder)
    {
        foreach (string unit in new[] { "lb/ac", "oz/ac", "ton/ac", "lb/1000 ft2", "oz/1000 ft2", "lb/100 ft2", "kg/ha", "t/ha",
            "g/m2" })
        {
            recorder.Call($"root: a rate printed in {unit}", () => Amounts.Print(PerAcre(137.4567), unit));
        }

        foreach (string unit in new[] { "ac", "ft2", "yd2", "m2", "ha" })
        {
            recorder.Call($"root: an area printed in {unit}", () => Amounts.Print(Acres(0.6234), unit));
        }

        foreach (string unit in new[] { "lb", "oz", "ton", "g", "kg", "t" })
        {
            recorder.Call($"root: a weight printed in {unit}", () => Amounts.Print(Pounds(43.2198), unit));
        }

        foreach (string unit in new[] { "ft", "in", "yd", "mi", "m", "cm", "mm", "km" })
        {
            recorder.Call($"root: a length printed in {unit}", () => Amounts.Print(Feet(14.3333), unit));
        }

        foreach (string unit in new[] { "mph", "ft/min", "ft/s", "km/h", "m/s" })
        {
            recorder.Call($"root: a speed printed in {unit}", () => Amounts.Print(Mph(2.96), unit));
        }

        foreach (string unit in new[] { "lb/min", "lb/s", "oz/min", "g/min", "g/s", "kg/min" })
        {
            recorder.Call($"root: a flow printed in {unit}", () => Amounts.Print(PoundsPerMinute(2.117), unit));
        }

        foreach (string unit in new[] { "gal", "qt", "pt", "cup", "bu", "ft3", "yd3", "L", "mL", "m3" })
        {
            recorder.Call($"root: a volume printed in {unit}", () => Amounts.Print(Volume.FromCubicFeet(0.8371), unit));
        }

        foreach (string unit in new[] { "lb/ft3", "lb/bu", "lb/gal", "kg/m3", "g/cm3" })
        {
            recorder.Call($"root: a bulk density printed in {unit}", () => Amounts.Print(PerBushel(57.3), unit));
        }

        foreach (string unit in new[] { "s", "min", "h", "d" })
        {
            recorder.Call($"root: a time printed in {unit}", () => Amounts.Print(TimeSpan.FromSeconds(217), unit));
        }

        recorder.Call("root: a fraction printed", () => Amounts.Print(Percent(12.3456)));
        recorder.Call("root: a fraction printed with two decimals", () => Amounts.Print(Percent(12.3456), 2));
        recorder.Call("root: a rate printed with three decimals", () => Amounts.Print(PerAcre(137.4567), decimals: 3));
        recorder.Call("root: a number printed with no decimals", () => Amounts.Print(12345.5, 0));
        recorder.Call("root: a number printed with two decimals", () => Amounts.Print(0.125, 2));
        recorder.Call("root: an amount in an unknown unit", () => Amounts.Print(Pounds(1), "stone"));
        recorder.Call("root: money printed", () => Currency.FromCode("USD").Print(1234.565m));
        recorder.Call("root: another currency printed", () => Currency.FromCode("EUR").Print(0.5m));
        recorder.Call("root: no currency", () => Currency.FromCode("dollars"));
    }

    private static void Read(Recorder recorder)
    {
        ReadAll<Area>(recorder, "area", Amounts.TryReadArea, "0.62 ac", "26,000 ft2", "2500 m2", "0.25 ha", "300 yd2", "1/2 ac",
            "one", "-1 ac", "5");
        ReadAll<Density>(recorder, "bulk density", Amounts.TryReadDensity, "60 lb/bu", "770 kg/m3", "8.3 lb/gal", "1.2 g/cm3",
            "48 lb/ft3", "60 lb");
        ReadAll<TimeSpan>(recorder, "time", Amounts.TryReadDuration, "45 s", "2.5 min", "1.5 h", "2 d", "soon");
        ReadAll<MassFlow>(recorder, "flow", Amounts.TryReadFlow, "2.1 lb/min", "16 g/s", "0.5 lb/s", "12 oz/min", "700 g/min",
            "0.9 kg/min", "2 lb");
        ReadAll<Length>(recorder, "length", Amounts.TryReadLength, "14 ft", "4.2 m", "30 in", "20 yd", "0.1 mi", "45 cm", "7 mm",
            "0.3 km", "14");
        ReadAll<Mass>(recorder, "weight", Amounts.TryReadMass, "50 lb", "45 g", "12 oz", "2 ton", "22.7 kg", "1.5 t", "50,5 lb");
        ReadAll<Fraction>(recorder, "percentage", Amounts.TryReadPercent, "85 %", "12.5 percent", "85", "101 %");
        ReadAll<ApplicationRate>(recorder, "rate", Amounts.TryReadRate, "40 lb/ac", "2.25 ton/ac", "8 oz/ac", "5 lb/1000 ft2",
            "10 oz/1000 ft2", "0.5 lb/100 ft2", "250 kg/ha", "2 t/ha", "30 g/m2", "40 lb");
        ReadAll<Speed>(recorder, "speed", Amounts.TryReadSpeed, "3 mph", "264 ft/min", "4.4 ft/s", "5 km/h", "1.3 m/s", "fast");
        ReadAll<Temperature>(recorder, "temperature", Amounts.TryReadTemperature, "50 F", "10 C", "-4 C", "50");
        ReadAll<Volume>(recorder, "volume", Amounts.TryReadVolume, "5 gal", "2 bu", "3 qt", "1 pt", "4 cups", "2 ft3", "1 yd3",
            "20 L", "750 mL", "0.5 m3", "some");
    }

    private static void ReadAll<T>(Recorder recorder, string what, Reader<T> reader, params string[] texts)
    {
        foreach (string text in texts)
        {
            recorder.Call($"root: {what} read from '{text}'", () => reader(text, out var value, out _) ? value : "not read");
        }
    }

    private static void Others(Recorder recorder)
    {
        var tag = Source.Find("SEED-S01");
        recorder.Call("root: findings in order", () => Finding.InOrder(
        [
            new Finding(new("b-note", FindingSeverity.Note, new("b"), null, tag), []),
            new Finding(new("a-caution", FindingSeverity.Caution, new("a"), null, tag), []),
            new Finding(new("c-warning", FindingSeverity.Warning, new("c"), null, tag), []),
            new Finding(new("a-note", FindingSeverity.Note, new("a"), null, tag), []),
        ]).Select(f => f.Code).ToArray());
        recorder.Call("root: a line of working",
            () => new WorkedLine("Bulk rate", "rate / part", "15 / 0.524", new(tag, DataStatus.Read)).ToString());
        foreach (var source in Source.All)
        {
            recorder.Call($"reference: the source {source.Id}",
                () => new[] { Source.Find(source.Id).Edition, source.SupersededBy?.Id });
        }

        recorder.Call("reference: an unknown source", () => !Source.TryFind("none", out _, out _));
        recorder.Call("reference: an unknown source asked for", () => Source.Find("none"));
        foreach (var finding in Reference.FindingCatalog.Templates)
        {
            recorder.Add("reference: how serious a caution is", finding.Code, finding.Severity);
        }
    }
}
