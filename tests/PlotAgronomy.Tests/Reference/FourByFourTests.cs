using System.Runtime.Intrinsics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

/// <summary>Four places of a table looked up at once, beside a look-up of each number.</summary>
public class FourByFourTests
{
    private const int Places = 50;

    [Fact]
    public void Each_number_of_each_place_is_where_a_single_look_up_finds_it()
    {
        double[] table = [.. Enumerable.Range(0, 4 * Places).Select(i => Math.Sqrt(i))];
        var random = new Random(1);
        for (int turn = 0; turn < 100; turn++)
        {
            long[] places = [.. Enumerable.Range(0, 4).Select(_ => random.NextInt64(Places))];
            var (a, b, c, d) = FourByFour.Load(table, Vector256.Create(places));
            Vector256<double>[] found = [a, b, c, d];
            Assert.All(
                Enumerable.Range(0, 16),
                i => Assert.Equal(table[(4 * places[i % 4]) + (i / 4)], found[i / 4].GetElement(i % 4)));
        }
    }

    [Fact]
    public void A_place_outside_the_table_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FourByFour.Load(new double[8], Vector256.Create(0L, 1, 2, 0)));
}
