using System.Runtime.InteropServices;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

/// <summary>Four and eight lanes beside one number alone: the same bits in every lane, whatever the processor has.</summary>
public class LanesTests
{
    private const int Longest = 50;

    private static readonly double[] Edges =
    [
        0, -0.0, 1, -1, 0.5, 31, 32, 1e-300, double.Epsilon, double.MaxValue, double.MinValue,
        double.PositiveInfinity, double.NegativeInfinity, double.NaN,
    ];

    [Fact]
    public void Four_lanes_give_what_one_gives() => GiveWhatOneGives<FourLanes>();

    [Fact]
    public void Eight_lanes_give_what_one_gives() => GiveWhatOneGives<EightLanes>();

    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(32)]
    [InlineData(33)]
    [InlineData(Longest)]
    public void A_number_is_found_at_its_place_in_a_list_of_any_length(int length)
    {
        double[] numbers = [.. Enumerable.Range(0, length).Select(i => Math.Sqrt(i))];
        var list = new LookUp(numbers);
        double[] places = [.. Enumerable.Range(0, 8 * Longest).Select(i => ((i * 7) % length) + 0.9)];
        double[] expected = [.. places.Select(place => numbers[(int)place])];
        Assert.Equal(expected, Found<OneLane>(list, places));
        Assert.Equal(expected, Found<FourLanes>(list, places));
        Assert.Equal(expected, Found<EightLanes>(list, places));
    }

    private static double[] Found<T>(LookUp list, double[] places)
        where T : unmanaged, ILanes<T>
    {
        double[] found = new double[places.Length];
        var (from, to) = (new ReadOnlyMemory<double>(places), found.AsMemory());
        for (int i = 0; i < places.Length; i += T.Count)
        {
            var at = MemoryMarshal.Cast<double, T>(from.Span.Slice(i, T.Count))[0];
            MemoryMarshal.Cast<double, T>(to.Span.Slice(i, T.Count))[0] = T.LookUp(list, T.Places(at));
        }

        return found;
    }

    private static void GiveWhatOneGives<T>()
        where T : unmanaged, ILanes<T>
    {
        var random = new Random(1);
        for (int turn = 0; turn < 2_000; turn++)
        {
            double[] a = Draw(random);
            double[] b = Draw(random);
            double[] c = [.. a.Select(value => random.Next(2) == 0 ? BitConverter.UInt64BitsToDouble(ulong.MaxValue) : 0)];
            Assert.Equal(Sums<OneLane>(a, b, c), Sums<T>(a, b, c));
            Assert.Equal(Bytes<OneLane>(a), Bytes<T>(a));
        }
    }

    private static double[] Draw(Random random) =>
        [
            .. Enumerable.Range(0, 8)
                .Select(_ => random.Next(3) == 0 ? Edges[random.Next(Edges.Length)] : 100 * random.NextDouble()),
        ];

    /// <summary>The bits that every sum gives for each number, in the order of the numbers.</summary>
    private static ulong[] Sums<T>(double[] a, double[] b, double[] c)
        where T : unmanaged, ILanes<T>
    {
        var found = new List<ulong[]>();
        for (int i = 0; i < a.Length; i += T.Count)
        {
            var (x, y, mask) = (At<T>(a, i), At<T>(b, i), At<T>(c, i));
            T[] sums =
            [
                x + y, x - y, x * y, x < y, x > y, x <= y, x >= y, x & y, x | y, ~x, x >>> 7,
                T.IsUnknown(x), T.HasBits(x, y), T.HasBits(x, x), T.When(mask, x, y), T.Least(Number(x), Number(y)),
                T.Places(Place(x)), T.Next(T.Places(Place(y)), mask), T.Of(2.5), T.OfBits(9),
            ];
            ulong[][] lanes = [.. sums.Select(sum => MemoryMarshal.Cast<T, ulong>(new[] { sum }).ToArray())];
            found.AddRange(Enumerable.Range(0, T.Count).Select(lane => lanes.Select(l => Canonical(l[lane])).ToArray()));
        }

        return [.. found.SelectMany(f => f)];
    }

    private static byte[] Bytes<T>(double[] a)
        where T : unmanaged, ILanes<T>
    {
        byte[] bytes = new byte[a.Length];
        for (int i = 0; i < a.Length; i += T.Count)
        {
            At<T>(a, i).CopyBytesTo(bytes.AsSpan(i));
        }

        return bytes;
    }

    private static T At<T>(double[] numbers, int from)
        where T : unmanaged, ILanes<T> => MemoryMarshal.Cast<double, T>(numbers.AsSpan(from, T.Count))[0];

    private static T Number<T>(T value)
        where T : unmanaged, ILanes<T> => T.When(T.IsUnknown(value), T.Of(0), value) + T.Of(0);

    private static T Place<T>(T value)
        where T : unmanaged, ILanes<T> => T.When((value > T.Of(0)) & (value < T.Of(1000)), value, T.Of(3.7));

    /// <summary>NaN made by a sum may have any sign.</summary>
    private static ulong Canonical(ulong bits) =>
        bits != ulong.MaxValue && double.IsNaN(BitConverter.UInt64BitsToDouble(bits))
            ? BitConverter.DoubleToUInt64Bits(double.NaN)
            : bits;
}
