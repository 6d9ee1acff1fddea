using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

public class AtomicMassesTests
{
    /// <summary>Printed factors: International Fertilizer Association 2.2914 (with oxygen 15.9994), 1.2046; Virginia Cooperative Extension 1.6578 for MgO.</summary>
    [Fact]
    public void Oxide_factors_agree_with_the_printed_ones()
    {
        Assert.Equal(2.2914, AtomicMasses.PhosphatePerPhosphorus, 0.0001);
        Assert.Equal(1.2046, AtomicMasses.PotashPerPotassium, 0.00005);
        Assert.Equal(1.6578, AtomicMasses.MagnesiaPerMagnesium, 0.0006);
        Assert.Equal(56.077 / 40.078, AtomicMasses.QuicklimePerCalcium, 1e-12);
    }
}
