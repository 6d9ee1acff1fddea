using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A buffer reading with the name of its buffer, or without it: then it only tells why there is no rate.</summary>
internal static class BufferShape
{
    internal static PlanShape<BufferAsPrinted> Shape { get; } = Make();

    /// <summary>The buffer readings of a report in order, the unnamed last; null beyond them.</summary>
    internal static BufferAsPrinted? Of(SoilReport report, int place)
    {
        BufferAsPrinted[] all =
        [
            .. report.BufferPhs.Select(b => new BufferAsPrinted(b.Value, b.Buffer)),
            .. report.UnnamedBufferPh is { } unnamed ? [new BufferAsPrinted(unnamed, null)] : Array.Empty<BufferAsPrinted>(),
        ];
        return all.ElementAtOrDefault(place);
    }

    internal static ImmutableArray<BufferPh> Named(params ReadOnlySpan<BufferAsPrinted?> printed)
    {
        var named = ImmutableArray.CreateBuilder<BufferPh>();
        foreach (var one in printed)
        {
            if (one is { Name: { } buffer })
            {
                named.Add(BufferPh.FromValue(one.Ph, buffer));
            }
        }

        return named.ToImmutable();
    }

    internal static double? Unnamed(BufferAsPrinted? first, BufferAsPrinted? second) =>
        first is { Name: null } ? first.Ph
        : second is { Name: null } ? second.Ph
        : null;

    private static PlanShape<BufferAsPrinted> Make()
    {
        var shape = new PlanShape<BufferAsPrinted>("buffer", "A buffer reading; without the buffer's name it gives no rate.");
        const string Used = "Buffer the laboratory used; left out where the report does not say.";
        var name = shape.Optional("name", Choice(SoilWords.Buffers), Used, b => b.Name).Answers(LimingCodes.AskBuffer);
        var ph = shape.Required("ph", NumberTo<double>("ph-high"), "Buffer pH as printed.", b => b.Ph);
        shape.ReadAs(at => at.Try(ph, () =>
            {
                var read = new BufferAsPrinted(at.Get(ph), at.Maybe(name));
                _ = BufferPh.FromValue(read.Ph, read.Name ?? SoilBuffer.Smp);
                return read;
            }));
        return shape;
    }

    internal sealed record BufferAsPrinted(double Ph, SoilBuffer? Name);
}
