using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace PlotAgronomy.Reference;

/// <summary>Numbers by place.</summary>
/// <remarks>A short list, as printed tables are, is also held in vectors: eight of its numbers are picked at once where the
/// processor can.</remarks>
internal readonly struct LookUp
{
    private const int MostHeld = 32;

    private readonly double[] numbers;
    private readonly bool isHeld;
    private readonly Vector512<double> first;
    private readonly Vector512<double> second;
    private readonly Vector512<double> third;
    private readonly Vector512<double> fourth;

    internal LookUp(double[] numbers)
    {
        this.numbers = numbers;
        isHeld = Avx512F.IsSupported && numbers.Length <= MostHeld;
        if (isHeld)
        {
            Span<double> held = stackalloc double[MostHeld];
            numbers.CopyTo(held);
            first = Vector512.Create<double>(held);
            second = Vector512.Create<double>(held[8..]);
            third = Vector512.Create<double>(held[16..]);
            fourth = Vector512.Create<double>(held[24..]);
        }
    }

    /// <summary>The number at a place inside the list.</summary>
    internal double At(ulong place) => numbers[place];

    /// <summary>The numbers at eight places inside the list.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector512<double> At(Vector512<ulong> places) =>
        Avx512F.IsSupported && isHeld ? Picked(places.AsInt64()) : OneByOne(places);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector512<double> Picked(Vector512<long> places) =>
        Vector512.ConditionalSelect(
            Vector512.LessThan(places, Vector512.Create(MostHeld / 2L)).AsDouble(),
            Avx512F.PermuteVar8x64x2(first, places, second),
            Avx512F.PermuteVar8x64x2(third, places, fourth)
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector512<double> OneByOne(Vector512<ulong> places) =>
        Vector512.Create(
            At(places.GetElement(0)),
            At(places.GetElement(1)),
            At(places.GetElement(2)),
            At(places.GetElement(3)),
            At(places.GetElement(4)),
            At(places.GetElement(5)),
            At(places.GetElement(6)),
            At(places.GetElement(7))
        );
}
