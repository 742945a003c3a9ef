using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Jobs;

public sealed class RoomActsTests
{
    private static readonly Job Sample = JobStarts.Sample("basement-finish");

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void Set_Count_WhatTheyServeIsKeptAsFarAsItGoes(int count)
    {
        // The bath has one GFCI receptacle at its basin.
        var bath = RoomActs.All(RoomActs.Set(Sample, "bath", DeviceKind.GfciReceptacle, count)).First(r => r.Id == "bath");
        Assert.Equal(count, RoomActs.Count(bath, DeviceKind.GfciReceptacle));
        Assert.Equal(Math.Min(1, count), bath.Counts.Where(c => c.Kind is DeviceKind.GfciReceptacle && c.Serves is ServedPlace.Basin).Sum(c => c.Count));
    }

    [Fact]
    public void Add_UnknownRoom_JobStays() => Assert.Equal(RoomActs.All(Sample).Sum(r => r.Counts.Sum(c => c.Count)), RoomActs.All(RoomActs.Add(Sample, "nowhere", DeviceKind.Dimmer)).Sum(r => r.Counts.Sum(c => c.Count)));
}
