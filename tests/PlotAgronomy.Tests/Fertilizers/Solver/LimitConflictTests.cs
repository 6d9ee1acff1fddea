using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

public class LimitConflictTests
{
    private const int NodeLimit = 1000;

    [Theory, InlineData(PurchaseForm.WeighExact, 30), InlineData(PurchaseForm.BuyWholePackages, 30), InlineData(PurchaseForm.SpreadWholePackages, 60)]
    public void A_conflict_holds_no_limit_that_has_no_part_in_it(PurchaseForm form, int most)
    {
        int conflicts = 0;
        for (int seed = 0; seed < 300 && conflicts < most; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            if (Fits(problem, form))
            {
                continue;
            }

            conflicts++;
            // Where not even parts of packages would do, whole ones are not to blame.
            var tested = form == PurchaseForm.SpreadWholePackages && Fits(problem, PurchaseForm.WeighExact) ? form : PurchaseForm.WeighExact;
            var (needs, caps) = LimitConflict.Find(problem, form, NodeLimit);
            double[] need = new double[problem.Nutrients], cap = new double[problem.Nutrients];
            Array.Fill(cap, double.PositiveInfinity);
            needs.ForEach(n => need[n] = problem.Need[n]);
            caps.ForEach(n => cap[n] = problem.Cap[n]);
            Assert.False(Fits(problem.With(need, cap), tested));
            foreach (int nutrient in needs)
            {
                double[] less = [.. need];
                less[nutrient] = 0;
                Assert.True(Fits(problem.With(less, cap), tested));
            }

            foreach (int nutrient in caps)
            {
                double[] more = [.. cap];
                more[nutrient] = double.PositiveInfinity;
                Assert.True(Fits(problem.With(need, more), tested));
            }
        }

        Assert.Equal(most, conflicts);
    }

    [Theory, InlineData(PurchaseForm.WeighExact), InlineData(PurchaseForm.SpreadWholePackages)]
    public void What_fits_fits_for_the_general_solver_too(PurchaseForm form)
    {
        using var general = new GeneralSolver();
        int fitting = 0;
        for (int seed = 0; seed < 44; seed++)
        {
            var problem = RandomShelves.Draw(seed);
            double cost = form == PurchaseForm.WeighExact ? general.Weighed(problem) : general.Cheapest(problem, spreadWhole: true);
            Assert.Equal(!double.IsInfinity(cost), Fits(problem, form));
            fitting += double.IsInfinity(cost) ? 0 : 1;
        }

        Assert.InRange(fitting, 10, 40);
    }

    [Theory, InlineData(PurchaseForm.WeighExact), InlineData(PurchaseForm.SpreadWholePackages)]
    public void A_search_without_work_left_does_not_know(PurchaseForm form)
    {
        int unknown = 0;
        for (int seed = 0; seed < 44; seed++)
        {
            var work = new SearchWork(1);
            unknown += LimitConflict.Fits(RandomShelves.Draw(seed), form, NodeLimit, work) is null ? 1 : 0;
        }

        Assert.InRange(unknown, 5, 44);
    }

    private static bool Fits(PackageProblem problem, PurchaseForm form) =>
        LimitConflict.Fits(problem, form, NodeLimit, new SearchWork()) ?? throw new InvalidOperationException("The search stopped.");
}
