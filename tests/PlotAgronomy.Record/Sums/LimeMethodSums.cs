using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Every lime method, those from memory too, over its readings and targets.</summary>
internal static class LimeMethodSums
{
    private const double LargestCapacity = 1100;

    private static readonly double[] Parts = [-0.1, 0, 0.25, 0.5, 0.75, 1, 1.1];

    private static readonly (double WaterPh, SoilTexture Texture)[] Grounds =
        [(4.7, SoilTexture.SandyLoam), (5.2, SoilTexture.ClayLoam), (5.6, SoilTexture.Loam), (6.3, SoilTexture.SiltLoam)];

    internal static IEnumerable<string> Institutions =>
        LimeMethod.Everything.Select(m => m.Institution.Id).Distinct().Order(StringComparer.Ordinal);

    internal static void Record(Recorder recorder)
    {
        foreach (var method in LimeMethod.Everything)
        {
            recorder.Add($"lime method {method.Id}", "", LimeMethod.Find(method.Id));
            foreach (double target in new[] { 5.0, 6.1, 6.8 })
            {
                recorder.Call($"lime method {method.Id}: the target nearest to {target}", () => method.ClosestTarget(target));
            }

            foreach (var soil in method.Soils)
            {
                Grid(recorder, method, soil);
            }
        }

        Choices(recorder);
        Comparisons(recorder);
    }

    internal static SoilReport Sample(
        SoilClass soil, double waterPh, BufferPh? buffer, double acidity = 5, double aluminum = 60, double capacity = 350,
            SoilTexture texture = SoilTexture.SiltLoam) => new()
            {
                Laboratory = "test laboratory",
                WaterPh = WaterPh.FromValue(waterPh),
                SaltPh = SaltPh.FromValue(waterPh - 0.5),
                BufferPhs = buffer is null ? [] : [buffer],
                ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(acidity),
                PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(11),
                Readings = [SoilSums.Reading(SoilAnalyte.Aluminum, aluminum, extractant: Extractant.ModifiedMorgan)],
                Texture = texture,
                OrganicMatter = Percent(2.5),
                SampledDepth = Inches(6),
                SoilClass = soil,
                LimeBufferCapacity = LimeBufferCapacity.FromThirtyMinutes(capacity),
            };

    internal static Dictionary<string, object?> Short(LimeNeed need) => Named(
        ("reading", need.Reading),
        ("raw tons", need.RawTonsPerAcre),
        ("gross", need.Gross?.OfBasis),
        ("rate", need.Rate?.OfBasis),
        ("published", need.Published?.OfBasis),
        ("lowest", need.Lowest?.OfBasis),
        ("highest", need.Highest?.OfBasis),
        ("reading error", need.ReadingErrorPh),
        ("Findings", need.Findings));

    private static void Grid(Recorder recorder, LimeMethod method, SoilClass soil)
    {
        double[] targets = method.TargetPhs.IsDefaultOrEmpty ? [6.0, 6.5, 7.0] : [.. method.TargetPhs];
        foreach (double part in Parts)
        {
            double reading = ReadingAt(method, part);
            foreach (double target in targets)
            {
                foreach (var (waterPh, texture) in Grounds)
                {
                    string name = $"lime method {method.Id}, {Words(soil)}: reading {Three(reading)} to pH {Three(target)}, "
                        + $"water pH {Three(waterPh)}, {Words(texture)}";
                    recorder.Call(name, () => Short(method.NeedFor(Of(method, soil, reading, waterPh, texture), target)));
                }
            }
        }

        double middle = ReadingAt(method, 0.5);
        recorder.Call($"lime method {method.Id}, {Words(soil)}: with lime of earlier", () =>
            Short(method.NeedFor(Of(method, soil, middle, 5.2), targets[0], EarlierLime.FromRate(TonsPerAcre(1.5), 6))));
        recorder.Call($"lime method {method.Id}, {Words(soil)}: with a coarse reading",
            () => Short(method.NeedFor(Of(method, soil, middle, 5.2), targets[^1], readingErrorPh: 0.2)));
        recorder.Call($"lime method {method.Id}, {Words(soil)}: from a report alone",
            () => Short(method.NeedFor(Of(method, soil, middle, 5.2) with { LimeBufferCapacity = null }, targets[^1])));
        recorder.Call($"lime method {method.Id}, {Words(soil)}: a target between",
            () => Short(method.NeedFor(Of(method, soil, middle, 5.2), 6.27)));
        recorder.Call($"lime method {method.Id}, {Words(soil)}: a bare report",
            () => Short(method.NeedFor(new SoilReport { Laboratory = "test laboratory", SoilClass = soil }, targets[0])));
    }

    /// <summary>The reading goes where the method looks for it: a buffer, water pH, acidity, aluminum or capacity.</summary>
    private static SoilReport Of(LimeMethod method, SoilClass soil, double reading, double waterPh,
        SoilTexture texture = SoilTexture.Loam)
    {
        if (!method.Buffers.IsEmpty)
        {
            return Sample(soil, waterPh, BufferPh.FromValue(reading, method.Buffers[0]), texture: texture);
        }

        return method.HighestReading switch
        {
            < 10 => Sample(soil, reading, null, texture: texture),
            < 100 => Sample(soil, waterPh, null, acidity: reading, texture: texture),
            <= 1000 => Sample(soil, waterPh, null, aluminum: reading, texture: texture),
            _ => Sample(soil, waterPh, null, capacity: reading, texture: texture),
        };
    }

    private static double ReadingAt(LimeMethod method, double part) =>
        Math.Round(method.LowestReading + part * (Math.Min(method.HighestReading, LargestCapacity) - method.LowestReading), 3,
            MidpointRounding.ToEven);

    private static string Three(double number) => number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);

    private static void Choices(Recorder recorder)
    {
        foreach (string institution in Institutions)
        {
            recorder.Call($"lime methods of {institution}", () => Institution.Find(institution).LimeMethods.Select(m => m.Id).ToArray());
        }

        foreach (var buffer in Enum.GetValues<SoilBuffer>())
        {
            foreach (string institution in new[] { "Oregon", "Iowa", "Wisconsin", "North Carolina" })
            {
                recorder.Call($"lime methods of {institution} by {Words(buffer)}",
                    () => Institution.Find(institution).LimeMethods.Where(m => m.Buffers.Contains(buffer)).Select(m => m.Id).ToArray());
            }

            var sample = Sample(SoilClass.Mineral, 5.2, BufferPh.FromValue(6.3, buffer));
            recorder.Call($"lime methods that take a sample by {Words(buffer)}",
                () => LimeMethod.Accepting(sample).Select(m => m.Id).ToArray());
            recorder.Call($"lime methods that take a sample by {Words(buffer)}, with memory",
                () => LimeMethod.Accepting(sample, true).Select(m => m.Id).ToArray());
        }

        recorder.Call("lime methods: one that is not there", () => LimeMethod.Find("none"));
        recorder.Call("lime methods: a buffer pH without its buffer",
            () =>
                LimeMethod.Accepting(new SoilReport { Laboratory = "a laboratory", UnnamedBufferPh = 6.4 }).Select(m => m.Id).ToArray());
        recorder.Call("lime methods: an unnamed buffer pH", () =>
            Short(LimeMethod.Find("oregon-2025-sikora").NeedFor(new SoilReport
            {
                Laboratory = "a laboratory",
                SoilClass = SoilClass.Mineral,
                UnnamedBufferPh = 6.4,
            }, 6.4)));
        recorder.Call("lime methods: a sample of a report alone",
            () => PlotSoil.For(Sample(SoilClass.Mineral, 5.4, null) with { LimeBufferCapacity = null }));
        foreach (var capacity in new[] { LimeBufferCapacity.FromThirtyMinutes(350), LimeBufferCapacity.AtEquilibrium(700) })
        {
            recorder.Call($"lime buffer capacity {capacity}", () => capacity);
        }

        recorder.Call("lime buffer capacities alike",
            () =>
                new[] { LimeBufferCapacity.FromThirtyMinutes(1) == LimeBufferCapacity.FromThirtyMinutes(1),
                    LimeBufferCapacity.FromThirtyMinutes(1) != LimeBufferCapacity.AtEquilibrium(1) });
    }

    private static void Comparisons(Recorder recorder)
    {
        foreach (var buffer in new[] { SoilBuffer.Smp, SoilBuffer.Sikora, SoilBuffer.AdamsEvans, SoilBuffer.Mehlich })
        {
            var sample = Sample(SoilClass.Mineral, 5.3, BufferPh.FromValue(buffer == SoilBuffer.AdamsEvans ? 7.6 : 6.2, buffer));
            foreach (bool memory in new[] { false, true })
            {
                string name = $"lime methods side by side, {Words(buffer)}{(memory ? ", with memory" : "")}";
                recorder.Call(name, () => Short(LimeMethodComparison.For(sample, 6.5, Inches(6), includeFromMemory: memory)));
                recorder.Call($"{name}, through a ground limestone",
                    () => Short(LimeMethodComparison.For(sample, 6.5, Inches(6), LimingSums.Ground, memory)));
            }

            recorder.Call($"lime methods side by side, {Words(buffer)}, from a report alone",
                () => Short(LimeMethodComparison.For(sample with { LimeBufferCapacity = null }, 6.5, Inches(8))));
            recorder.Call($"lime on weak ground, {Words(buffer)}: whether it applies",
                () => WeaklyBufferedLime.AppliesTo(sample, 6.5));
        }

        var sand = new SoilReport
        {
            Laboratory = "test laboratory",
            WaterPh = WaterPh.FromValue(5.1),
            BufferPhs = [BufferPh.FromValue(7.8, SoilBuffer.AdamsEvans)],
            PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(2.5),
            Texture = SoilTexture.Sand,
            SoilClass = SoilClass.Mineral,
            LimeBufferCapacity = LimeBufferCapacity.FromThirtyMinutes(150),
        };
        recorder.Call("lime on weak ground, a sand: whether it applies", () => WeaklyBufferedLime.AppliesTo(sand, 6.2));
        recorder.Call("lime on weak ground, a sand", () => WeaklyBufferedLime.For(sand, 6.2));
        recorder.Call("lime on weak ground, a sand, by named methods",
            () =>
                WeaklyBufferedLime.For(sand, 6.2, LimeMethod.Find("adams-evans"),
                    LimeMethod.Find("georgia-lime-buffer-capacity")));
    }

    private static Dictionary<string, object?> Short(LimeMethodComparison comparison) => Named(
        ("spread", comparison.Spread),
        ("answers", comparison.Answers.Select(a => (a.Method.Id, a.Need.Rate?.OfBasis, a.Common, a.CommonLowest, a.CommonHighest,
            a.TargetPh))),
        ("Findings", comparison.Findings));
}
