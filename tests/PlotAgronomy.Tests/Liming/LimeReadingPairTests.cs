using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Water pH and buffer pH belong together; a pair that does not is asked about wherever it is used.</summary>
public class LimeReadingPairTests
{
    private static readonly DateOnly Today = new(2026, 11, 1);
    private static readonly string[] Asking = ["soil-ph-buffer-swapped", "soil-ph-buffer-contradict"];

    private static SoilReport Report(double water, double buffer, SoilBuffer kind) => Report(water, BufferPh.FromValue(buffer, kind));

    private static SoilReport Report(double water, params ImmutableArray<BufferPh> buffers) =>
        new() { Laboratory = "Iowa", WaterPh = WaterPh.FromValue(water), BufferPhs = buffers };

    private static bool IsAsked(IEnumerable<Finding> findings) => findings.Any(f => Asking.Contains(f.Code));

    private static bool IsAsked(double water, double buffer, SoilBuffer kind) => IsAsked(Report(water, buffer, kind).Check(Today));

    /// <summary>Computed: every pair of water pH 4.6 to 6.2 and a buffer pH at least 0.3 above it, up to the buffer's start, typed the
    /// wrong way round.</summary>
    [Theory]
    [InlineData(SoilBuffer.Smp, 7.5), InlineData(SoilBuffer.Sikora, 7.5), InlineData(SoilBuffer.Sikora2, 7.5), InlineData(SoilBuffer.Mehlich, 6.6)]
    [InlineData(SoilBuffer.ModifiedMehlich, 6.6), InlineData(SoilBuffer.AdamsEvans, 8.0), InlineData(SoilBuffer.ModifiedAdamsEvans, 8.0)]
    [InlineData(SoilBuffer.MooreSikora, 8.0), InlineData(SoilBuffer.Woodruff, 7.0), InlineData(SoilBuffer.NewWoodruff, 7.0)]
    public void A_swapped_pair_is_asked_about(SoilBuffer kind, double start)
    {
        var method = LimeMethod.Everything.FirstOrDefault(m => m.Buffers.Contains(kind)) ?? LimeMethod.Find("texture-fallback");
        int pairs = 0;
        for (int water = 46; water <= 62; water++)
        {
            for (int buffer = water + 3; buffer <= start * 10 + 1e-9; buffer++)
            {
                pairs++;
                var swapped = Report(buffer / 10.0, water / 10.0, kind);
                Assert.True(IsAsked(swapped.Check(Today)), $"water {buffer / 10.0}, {kind} {water / 10.0}");
                Assert.True(IsAsked(method.NeedFor(swapped, 6.5).Findings), $"{method.Name}: water {buffer / 10.0}, {kind} {water / 10.0}");
            }
        }

        Assert.True(pairs > 100, $"{pairs} pairs");
    }

    /// <summary>Computed: soils that hold 0.5 to 4.5 meq of acidity per unit of pH (2 to 3.5 at most where the buffer is for light soils),
    /// read by the acidity terms 12 x (7.0 - SMP), 4 x (6.6 - Mehlich) and 8 x (8.0 - Adams-Evans), each reading right or 0.1 off.</summary>
    [Theory]
    [InlineData(SoilBuffer.Smp, 12, 7.0, 7.5, 4.5), InlineData(SoilBuffer.Sikora, 12, 7.0, 7.5, 4.5)]
    [InlineData(SoilBuffer.Mehlich, 4, 6.6, 6.6, 3.5), InlineData(SoilBuffer.AdamsEvans, 8, 8.0, 8.0, 2.5), InlineData(SoilBuffer.NewWoodruff, 10, 7.0, 7.0, 4.5)]
    public void At_most_one_true_pair_in_fifty_is_asked_about(SoilBuffer kind, double perUnit, double end, double start, double most)
    {
        int pairs = 0;
        int asked = 0;
        for (int tenths = 45; tenths <= 76; tenths++)
        {
            for (double held = 0.5; held <= most + 1e-9; held += 0.25)
            {
                double reading = end - held * Math.Max(0, end - tenths / 10.0) / perUnit;
                foreach (int waterOff in (int[])[-1, 0, 1])
                {
                    foreach (int bufferOff in (int[])[-1, 0, 1])
                    {
                        double printed = Math.Min(start, Math.Round(reading * 10 + bufferOff, MidpointRounding.AwayFromZero) / 10);
                        pairs++;
                        asked += IsAsked((tenths + waterOff) / 10.0, printed, kind) ? 1 : 0;
                    }
                }
            }
        }

        Assert.True(pairs > 2000, $"{pairs} pairs");
        Assert.True(asked * 50 <= pairs, $"{asked} of {pairs}");
    }

    /// <summary>Practice: a soil at pH 4.6 has reserve acidity, and one at pH 7 has next to none.</summary>
    [Theory]
    [InlineData(4.6, 7.0, SoilBuffer.Smp, true), InlineData(4.6, 7.2, SoilBuffer.Sikora, true), InlineData(4.6, 6.6, SoilBuffer.Mehlich, true), InlineData(4.6, 8.0, SoilBuffer.AdamsEvans, true)]
    [InlineData(7.2, 5.4, SoilBuffer.Mehlich, true), InlineData(5.1, 7.0, SoilBuffer.Smp, false), InlineData(4.6, 6.9, SoilBuffer.Smp, false), InlineData(4.6, 5.6, SoilBuffer.Smp, false)]
    [InlineData(7.2, 6.6, SoilBuffer.Mehlich, false), InlineData(6.4, 6.2, SoilBuffer.Smp, true), InlineData(6.4, 6.3, SoilBuffer.Smp, false), InlineData(7.4, 7.1, SoilBuffer.Smp, false)]
    public void Readings_that_contradict_each_other_are_asked_about(double water, double buffer, SoilBuffer kind, bool asked) =>
        Assert.Equal(asked, IsAsked(water, buffer, kind));

    [Fact]
    public void Every_method_asks_about_a_swapped_pair()
    {
        var swapped = Report(6.5, 5.4, SoilBuffer.Smp);
        Assert.All(LimeMethod.Everything, m => Assert.True(IsAsked(m.NeedFor(swapped, 6.5).Findings), m.Name));
        Assert.All(LimeMethod.Everything, m => Assert.False(IsAsked(m.NeedFor(Report(5.4, 6.5, SoilBuffer.Smp), 6.5).Findings), m.Name));
    }

    /// <summary>Practice: a salt pH in place of the water pH, and a buffer without its name, are looked at alike.</summary>
    [Fact]
    public void A_salt_ph_and_an_unnamed_buffer_are_asked_about_alike()
    {
        var salt = new SoilReport { Laboratory = "Missouri", SaltPh = SaltPh.FromValue(6.6), BufferPhs = [BufferPh.FromValue(5.2, SoilBuffer.NewWoodruff)] };
        Assert.True(IsAsked(salt.Check(Today)));
        var unnamed = new SoilReport { Laboratory = "Iowa", WaterPh = WaterPh.FromValue(6.6), UnnamedBufferPh = 5.7 };
        Assert.True(IsAsked(unnamed.Check(Today)));
        Assert.False(IsAsked((unnamed with { WaterPh = WaterPh.FromValue(5.7), UnnamedBufferPh = 6.6 }).Check(Today)));
    }

    /// <summary>Practice: of two readings of one kind neither is taken before it is known which one counts.</summary>
    [Fact]
    public void Two_readings_in_one_buffer_are_asked_about_in_either_order()
    {
        var low = BufferPh.FromValue(6.0, SoilBuffer.Smp);
        var high = BufferPh.FromValue(6.6, SoilBuffer.Smp);
        foreach (var report in (SoilReport[])[Report(5.4, low, high), Report(5.4, high, low)])
        {
            var need = LimeMethod.Find("iowa-pm1688-table").NeedFor(report, 6.5);
            Assert.Null(need.Rate);
            Assert.Contains("soil-reading-twice", need.Findings.Select(f => f.Code));
            Assert.Contains("6 and 6.6", Assert.Single(report.Check(Today), f => f.Code == "soil-reading-twice").Text, StringComparison.Ordinal);
            Assert.Null(report.FindBuffer(SoilBuffer.Smp));
            Assert.NotEmpty(need.Questions);
        }

        var same = Report(5.4, low, BufferPh.FromValue(6.0, SoilBuffer.Smp));
        Assert.NotNull(LimeMethod.Find("iowa-pm1688-table").NeedFor(same, 6.5).Rate);
        Assert.DoesNotContain("soil-reading-twice", same.Check(Today).Select(f => f.Code));
    }

    [Fact]
    public void The_order_of_the_buffers_on_the_report_changes_no_rate()
    {
        var smp = BufferPh.FromValue(6.2, SoilBuffer.Smp);
        var sikora = BufferPh.FromValue(6.4, SoilBuffer.Sikora);
        foreach (var method in LimeMethod.Everything)
        {
            var one = method.NeedFor(Report(5.4, smp, sikora), method.ClosestTarget(6.5)).Rate;
            var other = method.NeedFor(Report(5.4, sikora, smp), method.ClosestTarget(6.5)).Rate;
            Assert.Equal(one?.OfBasis, other?.OfBasis);
        }
    }

    /// <summary>The methods are printed for organic soil (LIME-S3, NCR-221): on mineral soil they say nothing, at any pH.</summary>
    [Theory]
    [InlineData("tri-state-1995-organic", 5.3), InlineData("ncr-221-organic", 5.4)]
    public void A_method_for_organic_soil_gives_mineral_soil_no_answer_at_its_target(string id, double target)
    {
        var report = Report(5.4, 6.2, SoilBuffer.Smp) with { SoilClass = SoilClass.Mineral };
        var method = LimeMethod.Find(id);
        var need = method.NeedFor(report, method.ClosestTarget(target));
        Assert.Null(need.Rate);
        Assert.Contains("lime-soil-outside-method", need.Findings.Select(f => f.Code));
        Assert.DoesNotContain("lime-ph-at-target", need.Findings.Select(f => f.Code));
    }

    [Theory]
    [InlineData(5.5), InlineData(6.2), InlineData(7.2)]
    public void Without_a_water_pH_nothing_contradicts_the_buffer(double buffer)
    {
        var report = new SoilReport { Laboratory = "Iowa", BufferPhs = [BufferPh.FromValue(buffer, SoilBuffer.Smp)] };
        Assert.False(IsAsked(report.Check(Today)));
        Assert.False(IsAsked(LimeMethod.Find("iowa-pm1688-table").NeedFor(report, 6.5).Findings));
    }
}
