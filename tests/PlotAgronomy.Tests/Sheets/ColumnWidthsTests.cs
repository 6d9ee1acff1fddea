using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Sheets;

public class ColumnWidthsTests
{
    private static int[] Fit(int room, int[] wanted, params bool[] mayWrap) =>
        ColumnWidths.Fit(wanted, mayWrap.Length == 0 ? [.. wanted.Select(_ => true)] : mayWrap, room);

    [Fact]
    public void Columns_that_fit_keep_their_width() => Assert.Equal([3, 10, 4], Fit(17, [3, 10, 4]));

    [Fact]
    public void The_widest_gives_way_first() => Assert.Equal([3, 8, 4], Fit(15, [3, 10, 4]));

    [Fact]
    public void Columns_that_have_become_alike_give_way_alike() => Assert.Equal([5, 5, 3], Fit(13, [20, 8, 3]));

    [Fact]
    public void A_column_that_must_not_wrap_keeps_its_width() => Assert.Equal([10, 3], Fit(13, [10, 6], false, true));

    [Fact]
    public void When_nothing_else_helps_even_that_gives_way() => Assert.Equal([7, 3], Fit(10, [10, 6], false, false));

    [Fact]
    public void Every_column_keeps_at_least_one_character() => Assert.Equal([1, 1, 1], Fit(0, [5, 5, 1]));

    [Fact]
    public void No_columns_take_no_room() => Assert.Empty(Fit(10, []));

    [Property]
    public void They_fill_the_room_when_they_would_overflow_it(NonEmptyArray<PositiveInt> wanted, PositiveInt room)
    {
        int[] widths = [.. wanted.Get.Select(w => w.Get)];
        int most = Math.Max(room.Get, widths.Length);
        int[] fitted = Fit(most, widths);
        Assert.Equal(Math.Min(most, widths.Sum()), fitted.Sum());
        Assert.All(fitted.Zip(widths), w => Assert.InRange(w.First, 1, w.Second));
    }
}
