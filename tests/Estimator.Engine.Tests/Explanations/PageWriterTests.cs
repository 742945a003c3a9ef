using Estimator.Engine.Explanations;

namespace Estimator.Engine.Tests.Explanations;

public sealed class PageWriterTests
{
    // Worked by hand.
    [Theory]
    [InlineData(Operation.Sum, 12, 4, 16)]
    [InlineData(Operation.Difference, 12, 4, 8)]
    [InlineData(Operation.Product, 12, 4, 48)]
    [InlineData(Operation.Quotient, 12, 4, 3)]
    [InlineData(Operation.PercentOf, 50, 4, 2)]
    [InlineData(Operation.Minimum, 12, 4, 4)]
    [InlineData(Operation.Maximum, 12, 4, 12)]
    [InlineData(Operation.RoundUp, 13, 4, 16)]
    [InlineData(Operation.RoundDown, 15, 4, 12)]
    [InlineData(Operation.RoundNearest, 15, 4, 16)]
    public void Compute_EachOperation_IsTheHandWorkedOne(Operation operation, int a, int b, int result)
    {
        var page = new PageWriter(1);
        Assert.Equal(result, page.Compute(operation, "r", "l", Unit.Each, page.Constant("a", a), page.Constant("b", b)).Value);
    }

    [Fact]
    public void Compute_InputOfAnotherPage_IsImportedOnce()
    {
        var far = new PageWriter(1).Constant("far", 2);
        var page = new PageWriter(2);
        var twice = page.Compute(Operation.Sum, "r", "l", Unit.Each, far, far);
        Assert.Equal([far.Node], page.ToPage().Imports);
        Assert.Equal([far.Node, far.Node], page.ToPage()[twice.Node.Index].Inputs);
    }

    [Fact]
    public void Renumbered_PageWithAnImport_LeadsToTheNewNumbers()
    {
        var far = new PageWriter(1).Constant("far", 2);
        var page = new PageWriter(2);
        var sum = page.Compute(Operation.Sum, "r", "l", Unit.Each, far, page.Constant("near", 3));

        var moved = page.ToPage().Renumbered(n => n + 10)[sum.Node.Index];

        Assert.Equal(new NodeRef(12, sum.Node.Index), moved.Ref);
        Assert.Equal([far.Node with { Page = 11 }, new NodeRef(12, 0)], moved.Inputs);
        Assert.Equal(5, moved.Value);
    }
}
